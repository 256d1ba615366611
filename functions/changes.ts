import { addedQuantities } from '../src/estimate/quantities';
import { isPriced } from '../src/estimate/price';
import { changesBetween, measured, type Difference } from '../src/review/changes';
import { readFactors } from '../src/rules/read-factors';
import { readWalls } from '../src/walls/read-walls';
import { heading, quantityCell } from './cells';
import type { CellValue, Run } from './worksheet-function';

const NO_NUMBER = 'A zone has no contact window before or after this change.';

/** Spills what changed between two states of the walls, and what each change did. */
export const runChanges: Run = ([before, after, range, headings]) => {
  const factors = readFactors(range);
  const { system } = factors;
  const { changes, whole } = changesBetween(
    readWalls(before, factors, headings),
    readWalls(after, factors, headings),
    factors,
  );
  const shown = measured.filter((id) => id !== 'price' || isPriced(factors));
  const cells = (difference: Difference): CellValue[] =>
    shown.map((id) => quantityCell(difference[id], addedQuantities[id].kind, system, NO_NUMBER));
  return [
    [
      'Wall',
      'Change',
      'What',
      'Class',
      ...shown.map((id) => heading(addedQuantities[id].heading, addedQuantities[id].kind, system)),
    ],
    ...changes.map(({ wall, type, what, classes, difference }) => [
      wall,
      type,
      what,
      classes,
      ...cells(difference),
    ]),
    ['Whole difference', '', '', '', ...cells(whole)],
  ];
};
