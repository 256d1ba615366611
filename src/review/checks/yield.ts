import { toBase } from '../../quantity/conversions';
import type { QuantityId } from '../../estimate/quantities';
import { wholeCleans } from '../../rules/whole-cleans';
import type { Check } from '../finding';
import { shownValue } from '../shown';

/** Work that the norms do not have: it counts in a job's hours, and would make its washing look slow. */
const besideTheClean = [
  'maskHours',
  'unmaskHours',
  'glassHours',
  'scaffoldHours',
  'brushHours',
  'sampleHours',
  'mobilizeHours',
  'protectHours',
] as const satisfies readonly QuantityId[];

/**
 * Area per labor-hour of the clean itself (scraping, washing, moves, set-up, re-clean), where the whole job is asked
 * for, against public norms of whole cleans.
 */
export const yieldOutsideNorms: Check = ({ zones, job, factors }) => {
  if (zones.length < job.length) return [];
  const sum = (of: QuantityId) => zones.reduce((total, { totals }) => total + totals[of], 0);
  const labor = sum('laborHours');
  const onWall = labor - sum('setupHours');
  const cleaning = besideTheClean.reduce((hours, of) => hours - sum(of), onWall);
  // Set-up goes with all hours alike, so that each carries the same share of it.
  const done = sum('washedArea') / (cleaning * (labor / onWall));
  const norms = wholeCleans.map((norm) => ({ ...norm, done: toBase(norm.value, norm.unit) }));
  const least = norms.reduce((a, b) => (b.done < a.done ? b : a));
  const most = norms.reduce((a, b) => (b.done > a.done ? b : a));
  if (!(done > 0) || (done >= least.done && done <= most.done)) return [];
  const shown = (value: number) => shownValue(value, 'areaPerLaborHour', factors);
  return [
    {
      check: 'yield',
      what: `${shown(done)} of cleaning, outside of ${shown(least.done)} to ${shown(most.done)}, published norms for like work`,
      where: 'the whole job',
      why: 'Area per labor-hour is the number that an estimator checks first. Counted here as in the norms: scraping, washing, re-clean, moves and set-up; without masking, glass, scaffold, brushing down, sample panels, mobilization and protection',
      todo:
        done < least.done
          ? 'Look for a unit, an area or a rate that is too small, or say why this job is slow'
          : 'Look for a unit, an area or a rate that is too large, or say why this job is quick',
      source: (done < least.done ? least : most).source,
    },
  ];
};
