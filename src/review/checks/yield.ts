import { toBase } from '../../quantity/conversions';
import { wholeCleans } from '../../rules/whole-cleans';
import type { Check } from '../finding';
import { shownValue } from '../shown';

/** Area per labor-hour of the whole job, where all of it is asked for, against public norms of whole cleans. */
export const yieldOutsideNorms: Check = ({ zones, job, factors }) => {
  if (zones.length < job.length) return [];
  const sum = (of: 'washedArea' | 'laborHours') => zones.reduce((total, { totals }) => total + totals[of], 0);
  const done = sum('washedArea') / sum('laborHours');
  const norms = wholeCleans.map((norm) => ({ ...norm, done: toBase(norm.value, norm.unit) }));
  const least = norms.reduce((a, b) => (b.done < a.done ? b : a));
  const most = norms.reduce((a, b) => (b.done > a.done ? b : a));
  if (!(done > 0) || (done >= least.done && done <= most.done)) return [];
  const shown = (value: number) => shownValue(value, 'areaPerLaborHour', factors);
  return [
    {
      check: 'yield',
      what: `${shown(done)} over all, outside of ${shown(least.done)} to ${shown(most.done)}, public norms of like work`,
      where: 'the whole job',
      why: 'Area per labor-hour, set-up and moves included, is the number that an estimator checks first; a small job is slow because of its sample panels',
      todo:
        done < least.done
          ? 'Look for a unit, an area or a rate that is too small, or say why this job is slow'
          : 'Look for a unit, an area or a rate that is too large, or say why this job is quick',
      source: (done < least.done ? least : most).source,
    },
  ];
};
