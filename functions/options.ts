import { maskOptions, type MaskOption } from '../src/estimate/options';
import { isPriced } from '../src/estimate/price';
import { classInWords, className } from '../src/rules/cleaner-classes';
import type { FactorsInForce } from '../src/rules/read-factors';
import { readQuestion } from './arguments';
import { heading, notAvailable, quantityCell } from './cells';
import { rateCells, rateHeadings } from './rate-cells';
import type { CellValue, Run } from './worksheet-function';

/** Spills the mask-or-govern ladder of each zone, at equal scope. */
export const runOptions: Run = ([walls, zone, factors, headings]) => {
  const question = readQuestion(walls, zone, factors, headings);
  const { system } = question.factors;
  const priced = isPriced(question.factors);
  const ladders = maskOptions(question.zones, question.job, question.factors);
  return [
    [
      'Zone',
      'Class allowed',
      'Cleaner',
      'Rows masked',
      'Washed afterwards',
      heading('Washed area', 'area', system),
      heading('Masking', 'area', system),
      'Class used',
      'Labor-hours',
      heading('Water', 'volume', system),
      ...(priced ? ['Price', 'Price of the job'] : ['Labor-hours of the job']),
      ...rateHeadings(priced, system),
      'Mark',
    ],
    ...question.zones.flatMap(({ name }, place) =>
      (ladders[place] ?? []).map((option) => [name, ...optionLine(option, question.factors, priced)]),
    ),
  ];
};

function optionLine(option: MaskOption, { system }: FactorsInForce, priced: boolean): CellValue[] {
  const { estimate, reason } = option;
  const head = option.class === undefined ? ['as marked', ''] : [option.class, className(option.class)];
  if (estimate === undefined) {
    const none = notAvailable(reason ?? '');
    return [...head, reason ?? '', '', ...Array.from({ length: priced ? 9 : 7 }, () => none), 'not offered'];
  }
  const { totals, finding, classToUse, laterClasses } = estimate;
  return [
    ...head,
    option.masked.map(({ wall }) => wall).join(', ') || 'none',
    laterClasses.map((of) => classInWords(of)).join(', ') || 'none',
    quantityCell(totals.washedArea, 'area', system, undefined),
    quantityCell(totals.maskingArea, 'area', system, finding),
    classToUse ?? 'none',
    quantityCell(totals.laborHours, 'laborHours', system, finding),
    quantityCell(totals.water, 'volume', system, finding),
    ...(priced ? [quantityCell(totals.price, 'money', system, finding)] : []),
    quantityCell(option.job, priced ? 'money' : 'laborHours', system, finding),
    ...rateCells(totals, priced, system, finding),
    option.cheapest ? (priced ? 'cheapest' : 'fewest labor-hours') : '',
  ];
}
