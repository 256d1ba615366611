import { maskForClass } from '../govern/mask-for-class';
import { cleanerClasses, type CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import type { WallRow } from '../walls/wall-row';
import type { Zone } from '../walls/zones';
import { isPriced } from './price';
import { jobRules } from './row-quantities';
import { estimateFrom, type ZoneEstimate } from './schedule';
import { zoneOwn, type ZoneOwn } from './zone-own';

/** One line of the mask-or-govern ladder of a zone. Every line leaves the same walls clean. */
export interface MaskOption {
  /** The class that every bare row allows; undefined for the zone as it is marked. */
  readonly class: CleanerClass | undefined;
  /** Rows that are masked while the zone is washed, and then, being masonry, washed at their own class. */
  readonly masked: readonly WallRow[];
  /** The zone with these rows masked. */
  readonly rows: readonly WallRow[];
  /** Undefined where the class cannot be allowed. */
  readonly estimate: ZoneEstimate | undefined;
  /** Price of the whole job with this line, or its labor-hours where labor has no price. */
  readonly job: number;
  /** Why the class cannot be allowed, or has no price; undefined where it is. */
  readonly reason: string | undefined;
  /** Whether no other line of the zone makes the job cheaper; by labor-hours where labor has no price. */
  readonly cheapest: boolean;
}

/**
 * The mask-or-govern ladder at equal scope: the zone as it is marked, then for each class the rows masked that may not
 * meet it, washed afterwards at their own class. Exact over the four ceilings; masking single rows beyond them is not
 * tried. What belongs to the job moves with it, so that the lines are compared by the whole job.
 * @param zones the zones whose ladders are wanted
 * @param job all zones of the job
 * @param factors the factors in force
 * @returns the lines of each zone, the zone as it is marked first, then the mildest class
 */
export function maskOptions(
  zones: readonly Zone[],
  job: readonly Zone[],
  factors: FactorsInForce,
): MaskOption[][] {
  const rules = jobRules(factors);
  const owns = job.map((zone, index) => zoneOwn(zone, index, rules, factors));
  const priced = isPriced(factors);
  const withZone = (
    zone: Zone,
    rows: readonly WallRow[],
  ): Pick<MaskOption, 'estimate' | 'job' | 'reason'> => {
    const index = job.indexOf(zone);
    const changed: Zone = { name: zone.name, rows, below: zone.below };
    const own = rows === zone.rows ? owns[index] : zoneOwn(changed, index, rules, factors);
    const all: ZoneOwn[] = own === undefined ? owns : owns.with(index, own);
    const { zones: estimates } = estimateFrom(all, rules, factors);
    const estimate = estimates[index];
    const whole = estimates.reduce((sum, { totals }) => sum + (priced ? totals.price : totals.laborHours), 0);
    return { estimate, job: whole, reason: estimate?.finding };
  };
  return zones.map((zone) => {
    const asMarked = {
      class: undefined,
      masked: zone.rows.filter(({ masked }) => masked),
      rows: zone.rows,
      ...withZone(zone, zone.rows),
    };
    const rungs = cleanerClasses.map(({ class: wanted }) => {
      const mask = maskForClass(zone, wanted);
      return mask.feasible
        ? { class: wanted, masked: mask.masked, rows: mask.rows, ...withZone(zone, mask.rows) }
        : { class: wanted, masked: [], rows: zone.rows, estimate: undefined, job: NaN, reason: mask.reason };
    });
    const lines = [asMarked, ...rungs];
    const least = lines.reduce((best, line) => (line.job < best ? line.job : best), Infinity);
    // Where two cost the same the first is marked: the zone as it is, then the gentlest.
    const first = lines.findIndex((line) => line.job === least);
    return lines.map((line, place) => ({ ...line, cheapest: place === first }));
  });
}
