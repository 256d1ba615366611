import { isPriced } from '../src/estimate/price';
import {
  addedQuantities,
  moneyIds,
  physicalIds,
  type Quantities,
  type QuantityId,
} from '../src/estimate/quantities';
import type { ZoneEstimate } from '../src/estimate/schedule';
import { constants } from '../src/rules/constants';
import type { Kind, System } from '../src/quantity/systems';
import { answer, readQuestion } from './arguments';
import { heading, notAvailable, quantityCell } from './cells';
import { NOTHING_WASHED } from './governing';
import type { CellValue, Run } from './worksheet-function';

interface ZoneColumn {
  readonly heading: string;
  readonly kind: Kind;
  readonly of: (zone: ZoneEstimate) => number;
}

const zoneColumns: readonly ZoneColumn[] = [
  { heading: 'Pre-wet', kind: 'minutes', of: ({ wet }) => wet.needed },
  { heading: 'Passes', kind: 'count', of: ({ wet }) => wet.passes },
  { heading: 'Patch', kind: 'area', of: ({ patch, finding }) => patch?.area ?? (finding ? NaN : 0) },
  { heading: 'Wait', kind: 'minutes', of: ({ patch, finding }) => patch?.wait ?? (finding ? NaN : 0) },
  { heading: 'Patches', kind: 'count', of: ({ patches }) => patches },
];

/** Spills the whole estimate, a line a zone. */
export const runSchedule: Run = ([walls, zone, factors, headings]) => {
  const question = readQuestion(walls, zone, factors, headings);
  const { system } = question.factors;
  const { zones } = answer(question);
  const money = isPriced(question.factors) ? moneyIds : [];
  return [
    [
      'Zone',
      'Ceiling',
      'Set by',
      'Class',
      ...zoneColumns.map((column) => heading(column.heading, column.kind, system)),
      ...quantityHeadings(physicalIds, system),
      'Calendar days',
      ...quantityHeadings(money, system),
    ],
    ...zones.map((estimate) => zoneLine(estimate, money, system)),
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

function zoneLine(estimate: ZoneEstimate, money: readonly QuantityId[], system: System): CellValue[] {
  const { zone, governing, totals, finding } = estimate;
  const none = notAvailable(NOTHING_WASHED);
  return [
    zone.name,
    governing?.ceiling ?? none,
    governing?.governors.map(({ name }) => name).join(', ') ?? none,
    governing?.classToUse ?? none,
    ...zoneColumns.map(({ kind, of }) => quantityCell(of(estimate), kind, system, finding)),
    ...quantityCells(totals, physicalIds, system, finding),
    quantityCell(calendarDays(totals.days), 'days', system, finding),
    ...quantityCells(totals, money, system, finding),
  ];
}

function calendarDays(days: number): number {
  return Math.max(0, Math.ceil(days - constants.guard.value));
}
