import { addedQuantities, quantityIds, type Quantities } from '../src/estimate/quantities';
import type { ZoneEstimate } from '../src/estimate/schedule';
import type { Kind, System } from '../src/quantity/systems';
import { answer, FACTORS, HEADINGS, readQuestion, WALLS, ZONE } from './arguments';
import { heading, notAvailable, quantityCell } from './cells';
import { NOTHING_WASHED } from './governing';
import type { CellValue, WorksheetFunction } from './worksheet-function';

const parameters = [WALLS, ZONE, FACTORS, HEADINGS];

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

/** The whole estimate, a line a zone. */
export const scheduleFunction: WorksheetFunction = {
  name: 'SCHEDULE',
  description: 'Spills the whole estimate: one line a zone with every quantity.',
  parameters,
  result: 'matrix',
  unit: 'text',
  rule: 'every rule of the model',
  example: '=WASH.SCHEDULE(Walls[#All],,Factors[#All])',
  run: ([walls, zone, factors, headings]) => {
    const question = readQuestion(walls, zone, factors, headings);
    const { system } = question.factors;
    const { zones } = answer(question);
    return [
      [
        'Zone',
        'Ceiling',
        'Set by',
        'Class',
        ...zoneColumns.map((column) => heading(column.heading, column.kind, system)),
        ...quantityHeadings(system),
        'Calendar days',
      ],
      ...zones.map((estimate) => zoneLine(estimate, system)),
    ];
  },
};

/** Every quantity of every row. */
export const wallRowsFunction: WorksheetFunction = {
  name: 'WALLROWS',
  description: 'Spills every quantity of every wall row; the columns add up to SCHEDULE.',
  parameters,
  result: 'matrix',
  unit: 'text',
  rule: 'every rule of the model; what belongs to a zone is shared out by washed area',
  example: '=WASH.WALLROWS(Walls[#All],"Library south",Factors[#All])',
  run: ([walls, zone, factors, headings]) => {
    const question = readQuestion(walls, zone, factors, headings);
    const { system } = question.factors;
    const lines: { row: number; cells: CellValue[] }[] = [];
    answer(question, {
      takeRow: (row, quantities, { finding }) => {
        const cells = [row.wall, row.zone, row.material.name, ...quantityCells(quantities, system, finding)];
        lines.push({ row: row.row, cells });
      },
    });
    lines.sort((a, b) => a.row - b.row);
    return [['Wall', 'Zone', 'Material', ...quantityHeadings(system)], ...lines.map(({ cells }) => cells)];
  },
};

function quantityHeadings(system: System): string[] {
  return quantityIds.map((id) => heading(addedQuantities[id].heading, addedQuantities[id].kind, system));
}

function quantityCells(
  quantities: Readonly<Quantities>,
  system: System,
  finding: string | undefined,
): CellValue[] {
  return quantityIds.map((id) => quantityCell(quantities[id], addedQuantities[id].kind, system, finding));
}

function zoneLine(estimate: ZoneEstimate, system: System): CellValue[] {
  const { zone, governing, totals, finding } = estimate;
  const none = notAvailable(NOTHING_WASHED);
  return [
    zone.name,
    governing?.ceiling ?? none,
    governing?.governors.map(({ name }) => name).join(', ') ?? none,
    governing?.classToUse ?? none,
    ...zoneColumns.map(({ kind, of }) => quantityCell(of(estimate), kind, system, finding)),
    ...quantityCells(totals, system, finding),
    quantityCell(Math.ceil(totals.days), 'days', system, finding),
  ];
}
