import { isPriced } from '../src/estimate/price';
import {
  addedQuantities,
  moneyIds,
  physicalIds,
  type Quantities,
  type QuantityId,
} from '../src/estimate/quantities';
import type { ZoneEstimate } from '../src/estimate/schedule';
import { unitRates } from '../src/estimate/unit-rates';
import type { RowWash } from '../src/estimate/wash-row';
import { classInWords, className } from '../src/rules/cleaner-classes';
import { constants } from '../src/rules/constants';
import type { FactorsInForce } from '../src/rules/read-factors';
import type { Kind, System } from '../src/quantity/systems';
import { answer, readQuestion } from './arguments';
import { heading, notAvailable, quantityCell, valueError } from './cells';
import { NOTHING_WASHED } from './governing';
import { NO_AREA } from './rate-cells';
import type { CellValue, Run } from './worksheet-function';

interface ZoneColumn {
  readonly heading: string;
  readonly kind: Kind;
  readonly of: (zone: ZoneEstimate) => number;
}

/** The greatest of the washed rows of a zone; 0 where there is none. */
const most = ({ washed }: ZoneEstimate, of: (how: RowWash) => number): number =>
  washed.reduce((so, { how }) => Math.max(so, of(how)), 0);

/** What differs from wall to wall, by its hardest wall. */
const zoneColumns: readonly ZoneColumn[] = [
  { heading: 'Most pre-wet passes', kind: 'count', of: (zone) => most(zone, ({ wet }) => wet.passes) },
  {
    heading: 'Most passes of cleaner',
    kind: 'count',
    of: (zone) => most(zone, ({ cycle }) => cycle?.passes ?? 0),
  },
  { heading: 'Smallest patch', kind: 'area', of: smallestPatch },
  { heading: 'Longest wait', kind: 'minutes', of: (zone) => most(zone, ({ cycle }) => cycle?.wait ?? 0) },
];

/** 0 where no cleaner is used. */
function smallestPatch({ washed }: ZoneEstimate): number {
  const least = washed.reduce((so, { how: { cycle } }) => Math.min(so, cycle?.patch ?? so), Infinity);
  return least === Infinity ? 0 : least;
}

/** Spills the whole estimate, a line a zone. */
export const runSchedule: Run = ([walls, zone, factors, headings]) => {
  const question = readQuestion(walls, zone, factors, headings);
  const { system } = question.factors;
  const { zones } = answer(question);
  const priced = isPriced(question.factors);
  const money = priced ? moneyIds : [];
  return [
    [
      'Zone',
      'Ceiling',
      'Set by',
      'Class',
      'Cleaner',
      'Washed afterwards',
      ...zoneColumns.map((column) => heading(column.heading, column.kind, system)),
      ...quantityHeadings(physicalIds, system),
      'Calendar days',
      heading('Area per labor-hour', 'areaPerLaborHour', system),
      ...quantityHeadings(money, system),
      ...(priced ? [heading('Price per area', 'moneyPerArea', system)] : []),
    ],
    ...zones.map((estimate) => zoneLine(estimate, money, question.factors)),
  ];
};

/** Spills every quantity of every row. */
export const runWallRows: Run = ([walls, zone, factors, headings]) => {
  const question = readQuestion(walls, zone, factors, headings);
  const { system } = question.factors;
  const ids = isPriced(question.factors) ? [...physicalIds, ...moneyIds] : physicalIds;
  const lines: { row: number; cells: CellValue[] }[] = [];
  answer(question, {
    takeRow: (row, quantities, { finding }) => {
      const cells = [
        row.wall,
        row.zone,
        row.material.name,
        ...quantityCells(quantities, ids, system, finding),
      ];
      lines.push({ row: row.row, cells });
    },
  });
  lines.sort((a, b) => a.row - b.row);
  return [['Wall', 'Zone', 'Material', ...quantityHeadings(ids, system)], ...lines.map(({ cells }) => cells)];
};

function quantityHeadings(ids: readonly QuantityId[], system: System): string[] {
  return ids.map((id) => heading(addedQuantities[id].heading, addedQuantities[id].kind, system));
}

function quantityCells(
  quantities: Readonly<Quantities>,
  ids: readonly QuantityId[],
  system: System,
  finding: string | undefined,
): CellValue[] {
  return ids.map((id) => quantityCell(quantities[id], addedQuantities[id].kind, system, finding));
}

function zoneLine(
  estimate: ZoneEstimate,
  money: readonly QuantityId[],
  factors: FactorsInForce,
): CellValue[] {
  const { zone, governing, classToUse, laterClasses, totals, finding } = estimate;
  const { system } = factors;
  const none = notAvailable(NOTHING_WASHED);
  const { washedArea } = totals;
  const { pricePerArea, areaPerLaborHour } = unitRates(totals);
  const cell = (value: number, kind: Kind): CellValue => quantityCell(value, kind, system, finding);
  const noArea = notAvailable(NO_AREA);
  return [
    zone.name,
    governing?.ceiling ?? none,
    governing?.governors.map(({ name }) => name).join(', ') ?? none,
    classToUse === undefined ? none : finding === undefined ? classToUse : valueError(finding),
    classToUse === undefined ? none : className(classToUse),
    laterClasses.map((of) => classInWords(of)).join(', '),
    ...zoneColumns.map(({ kind, of }) => cell(of(estimate), kind)),
    ...quantityCells(totals, physicalIds, system, finding),
    cell(calendarDays(totals.days, washedArea > 0, factors), 'days'),
    washedArea > 0 ? cell(areaPerLaborHour, 'areaPerLaborHour') : noArea,
    ...quantityCells(totals, money, system, finding),
    ...(money.length === 0 ? [] : [washedArea > 0 ? cell(pricePerArea, 'moneyPerArea') : noArea]),
  ];
}

/** Whole days of work, with the wait for the sample and the days lost to weather. */
function calendarDays(days: number, washed: boolean, factors: FactorsInForce): number {
  const whole = Math.max(0, Math.ceil(days - constants.guard.value));
  return washed ? whole + factors.value('sample.wait') + factors.value('weather.days') : whole;
}
