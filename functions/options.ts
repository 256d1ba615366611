import { maskOptions, type MaskOption } from '../src/estimate/options';
import { isPriced } from '../src/estimate/price';
import { className } from '../src/rules/cleaner-classes';
import type { FactorsInForce } from '../src/rules/read-factors';
import { readQuestion } from './arguments';
import { heading, notAvailable, quantityCell } from './cells';
import type { CellValue, Run } from './worksheet-function';

/** Spills the mask-or-govern ladder of each zone. */
export const runOptions: Run = ([walls, zone, factors, headings]) => {
  const question = readQuestion(walls, zone, factors, headings);
  const { system } = question.factors;
  const priced = isPriced(question.factors);
  return [
    [
      'Zone',
      'Class allowed',
      'Cleaner',
      'Rows to mask',
      heading('Left unwashed', 'area', system),
      heading('Masking', 'area', system),
      'Class used',
      'Crew-hours',
      heading('Water', 'volume', system),
      ...(priced ? ['Price'] : []),
      'Mark',
    ],
    ...question.zones.flatMap((found) =>
      maskOptions(found, question.factors).map((option) => [
        found.name,
        ...optionLine(option, question.factors, priced),
      ]),
    ),
  ];
};

function optionLine(option: MaskOption, { system }: FactorsInForce, priced: boolean): CellValue[] {
  const { estimate, reason } = option;
  const head = [option.class, className(option.class)];
  if (estimate === undefined) {
    const none = notAvailable(reason ?? '');
    return [...head, reason ?? '', none, none, none, none, none, ...(priced ? [none] : []), 'not feasible'];
  }
  const { totals, finding, governing } = estimate;
  const marks = [
    option.asItStands ? 'as it stands' : '',
    option.cheapest ? (priced ? 'cheapest' : 'fewest crew-hours') : '',
  ];
  return [
    ...head,
    option.toMask.map(({ wall }) => wall).join(', ') || 'none',
    quantityCell(option.leftUnwashed, 'area', system, undefined),
    quantityCell(totals.maskingArea, 'area', system, finding),
    governing?.classToUse ?? 'none',
    quantityCell(totals.crewHours, 'crewHours', system, finding),
    quantityCell(totals.water, 'volume', system, finding),
    ...(priced ? [quantityCell(totals.price, 'money', system, finding)] : []),
    marks.filter(Boolean).join(', '),
  ];
}
