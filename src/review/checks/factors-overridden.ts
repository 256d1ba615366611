import { toBase } from '../../quantity/conversions';
import { className } from '../../rules/cleaner-classes';
import { factors as table } from '../../rules/factors';
import type { Check } from '../finding';
import { shownFactor, shownValue } from '../shown';

const kindOf = { ceiling: 'class', suction: 'suction', pressure: 'pressure' } as const;

/** Factors and materials whose values are the user's own, and beside which no source is noted. */
export const factorsOverridden: Check = ({ factors }) => {
  const changed = table
    // What only the user can know is theirs to state, and nothing to defend.
    .filter(
      ({ id, sourceKind }) =>
        sourceKind !== 'yours to state' && factors.changed(id) && factors.note(id) === '',
    )
    .map((row) => ({
      check: 'override',
      what: `${row.id} is ${shownFactor(factors, row.id)}; the starting value is ${shownValue(toBase(row.value, row.unit), row.kind, factors)}`,
      where: `factor ${row.id}`,
      why: row.meaning,
      todo: 'In a third column, note the label, test or record that it comes from',
      source: 'factors' as const,
    }));
  const own = factors.materials
    .map((material) => ({
      ...material,
      overridden: material.overridden.filter(
        (property) => factors.note(`material.${material.code}.${property}`) === '',
      ),
    }))
    .filter(({ overridden }) => overridden.length > 0)
    .map((material) => ({
      check: 'override',
      what: `${material.name}: ${material.overridden.map((property) => `${property} ${shownValue(material[property], kindOf[property], factors)}`).join(', ')}`,
      where: `material ${material.code}`,
      why: material.why,
      todo: "In a third column, note the maker's advice or the test that it comes from",
      source: 'factors' as const,
    }));
  const chosen =
    factors.chosenClass === undefined || factors.note('cleaner.class') !== ''
      ? []
      : [
          {
            check: 'override',
            what: `Class ${String(factors.chosenClass)} (${className(factors.chosenClass)}) is chosen in place of the one that takes the fewest labor-hours`,
            where: 'factor cleaner.class',
            why: 'A milder class takes more scrubbing; a class above the ceiling is never used',
            todo: 'Note the reason in a third column',
            source: 'factors' as const,
          },
        ];
  return [...changed, ...own, ...chosen];
};
