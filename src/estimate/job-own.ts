import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import type { Crew } from './crew';
import type { ZoneOwn } from './zone-own';

/** What belongs to the job as a whole, and the share of each zone in it. */
export interface JobOwn {
  /** Labor-hours. */
  readonly sampleHours: number;
  readonly mobilizeHours: number;
  readonly protectHours: number;
  /** Days of hire, of all teams together. */
  readonly hireDays: number;
  /** Days of work, unrounded. */
  readonly days: number;
  /** Share of each zone, by its hours; they add up to 1. */
  readonly shares: readonly number[];
}

/**
 * What belongs to the job: a sample panel of each masonry material that is washed, mobilization, protection, and hire
 * by whole days. It is shared out by the days of the zones before it, so that zones add up.
 * @param zones what each zone takes by itself
 * @param crew the crew in force
 * @param factors the factors in force
 * @param rec takes down the lines; `ownHours@` of each zone has been taken down
 * @returns hours, days and shares
 */
export function jobOwn(
  zones: readonly ZoneOwn[],
  crew: Crew,
  factors: FactorsInForce,
  rec?: Recorder,
): JobOwn {
  // A zone without a number has its own finding; the others keep theirs.
  const known = zones.filter(({ ownHours }) => !Number.isNaN(ownHours));
  const hours = known.reduce((sum, { ownHours }) => sum + ownHours, 0);
  const washed = new Set<string>();
  for (const zone of zones) {
    for (const { row } of zone.washed) if (row.material.masonry) washed.add(row.material.code);
  }
  const panels = washed.size;
  const sampleHours = panels * factors.value('sample.hours');
  const mobilizeHours = factors.value('mobilize.hours');
  const protectHours = factors.value('protect.hours');
  const all = hours + sampleHours + mobilizeHours + protectHours;
  const perDay = crew.size * crew.teams * (factors.value('shift') - factors.value('setup.perDay'));
  const days = all / perDay;
  const whole = Math.ceil(days - constants.guard.value);
  const hireDays = days > 0 ? Math.max(factors.value('hire.least'), whole) * crew.teams : 0;
  const shares = zones.map(({ ownHours }) =>
    Number.isNaN(ownHours) ? 0 : hours > 0 ? ownHours / hours : 1 / known.length,
  );
  if (rec) {
    const terms = known.map(({ index }) => `ownHours_z${String(index + 1)}`);
    rec.sum(
      'jobOwnHours',
      terms,
      known.map(({ ownHours }) => ownHours),
      'laborHours',
      'sum',
    );
    rec.line('samplePanels', sampleHours, { panels });
    rec.line('jobHours', all);
    rec.line('jobDays', days);
    rec.line('hireDays', hireDays, days > 0 ? undefined : '0');
  }
  return { sampleHours, mobilizeHours, protectHours, hireDays, days, shares };
}
