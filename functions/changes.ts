import { addedQuantities } from '../src/estimate/quantities';
import { isPriced } from '../src/estimate/price';
import { changesBetween, measured, type Difference } from '../src/review/changes';
import { readFactors } from '../src/rules/read-factors';
import { readWalls } from '../src/walls/read-walls';
import { heading, quantityCell } from './cells';
import type { CellValue, Run } from './worksheet-function';

const NO_NUMBER = 'A zone has no such number before or after this change.';

/** Spills what changed between two states of the walls, and the part of each change in the difference. */
export const runChanges: Run = ([before, after, range, headings]) => {
  const factors = readFactors(range);
  const { system } = factors;
  const { changes, whole, exact } = changesBetween(
    readWalls(before, factors, headings),
    readWalls(after, factors, headings),
    factors,
  );
  const priced = isPriced(factors);
  const shown = measured.filter((id) => id !== 'price' || priced);
  // What the parts are uncertain by, of the number that is read first.
  const uncertain = priced ? 'price' : 'laborHours';
  const cells = (difference: Difference): CellValue[] =>
    shown.map((id) => quantityCell(difference[id], addedQuantities[id].kind, system, NO_NUMBER));
  const error = (of: number): CellValue[] =>
    exact ? [] : [quantityCell(of, addedQuantities[uncertain].kind, system, NO_NUMBER)];
  return [
    [
      'Wall',
      'Change',
      'What',
      'Class',
      ...shown.map((id) => heading(addedQuantities[id].heading, addedQuantities[id].kind, system)),
      ...(exact ? [] : [`Standard error of ${addedQuantities[uncertain].heading.toLowerCase()}`]),
    ],
    ...changes.map(({ wall, type, what, classes, difference, error: spread }) => [
      wall,
      type,
      what,
      classes,
      ...cells(difference),
      ...error(spread[uncertain]),
    ]),
    ['Total change', '', '', '', ...cells(whole), ...error(0)],
  ];
};
