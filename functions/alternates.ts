import { alternatesOf, type AlternateLine, type AlternatesResult } from '../src/alternates/alternates';
import { bidPrice } from '../src/estimate/price';
import type { JobEstimate } from '../src/estimate/schedule';
import { readName } from './arguments';
import { movesInWords, notesInWords, togetherInWords, whatInWords, zoneInWords } from './alternates-words';
import { heading, quantityCell, valueError } from './cells';
import { rateCells, rateHeadings } from './rate-cells';
import type { CellValue, Run } from './worksheet-function';

const TOGETHER = 'All that save together';

/** Spills what each alternate adds to the bid or deducts from it. */
export const runAlternates: Run = ([walls, alternates, zone, factors, headings]) => {
  const result = alternatesOf({ walls, alternates, zone: readName(zone, 'zone'), factors, headings });
  const { base, lines, together, priced } = result;
  const { system } = result.factors;
  const head = [
    'Alternate',
    'What',
    'Class and governor before',
    'Class and governor after',
    'Labor-hours',
    'Labor-hours added',
    heading('Water', 'volume', system),
    heading('Water added', 'volume', system),
    ...(priced ? ['Price', 'Add or deduct'] : []),
    ...rateHeadings(priced, system),
    'Note',
  ];
  const asBid = base.zones.map((each) => zoneInWords(each.zone.name, each)).join('; ');
  const { line } = together;
  return [
    head,
    ['Base bid', '', asBid, asBid, ...numbers(base, 0, result), ''],
    ...lines.map((each) => [
      each.alternate.name,
      whatInWords(each.alternate),
      ...numbersOf(each, result),
      notesInWords(each, result).join(' '),
    ]),
    [
      TOGETHER,
      ...(line
        ? [whatInWords(line.alternate), ...numbersOf(line, result)]
        : ['', asBid, asBid, ...noNumbers(together.problem, result)]),
      togetherInWords(result),
    ],
  ];
};

function numbersOf(line: AlternateLine, result: AlternatesResult): CellValue[] {
  return [
    movesInWords(line, 'before'),
    movesInWords(line, 'after'),
    ...numbers(line.estimate, line.added, result),
  ];
}

function numbers({ totals, finding }: JobEstimate, added: number, result: AlternatesResult): CellValue[] {
  const { base, priced } = result;
  const { system } = result.factors;
  const why = finding ?? base.finding;
  const both = (id: 'laborHours' | 'water', kind: 'laborHours' | 'volume'): CellValue[] => [
    quantityCell(totals[id], kind, system, why),
    quantityCell(totals[id] - base.totals[id], kind, system, why),
  ];
  return [
    ...both('laborHours', 'laborHours'),
    ...both('water', 'volume'),
    ...(priced
      ? [
          quantityCell(bidPrice(totals.price), 'money', system, why),
          quantityCell(added, 'money', system, why),
        ]
      : []),
    ...rateCells(totals, priced, system, why),
  ];
}

/** Where no alternate saves the bid stands as it is; where they cannot stand together there is no number. */
function noNumbers(problem: string | undefined, result: AlternatesResult): CellValue[] {
  const asBid = numbers(result.base, 0, result);
  return problem === undefined ? asBid : asBid.map(() => valueError(problem));
}
