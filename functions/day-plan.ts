import { noQuantities, type Quantities } from '../src/estimate/quantities';
import type { ZoneEstimate } from '../src/estimate/schedule';
import type { Kind } from '../src/quantity/systems';
import { classInWords } from '../src/rules/cleaner-classes';
import type { FactorsInForce } from '../src/rules/read-factors';
import { factorAmount } from '../src/site/amount';
import { dayPlan, type DayPart } from '../src/site/day-plan';
import { cutToLines } from '../src/site/cut-to-lines';
import { wallsNamed } from '../src/site/named';
import { answer, readQuestion } from './arguments';
import { heading, quantityCell, valueError } from './cells';
import type { CellValue, Run } from './worksheet-function';

// So many characters fit the column of the walls on a sheet that prints sideways.
const WALLS_LINE = 60;
const WALLS_COLUMN = 2;

/** Spills what is done where on each working day, with whom and with what. */
export const runDayPlan: Run = ([walls, zone, factors, headings]) => {
  const question = readQuestion(walls, zone, factors, headings);
  const { system } = question.factors;
  // A zone by itself stands on the days that it has in the whole job.
  const ofRow = new Map<number, Readonly<Quantities>>();
  const { zones } = answer(
    { ...question, zones: question.job },
    {
      takeRow: ({ row }, quantities) => {
        ofRow.set(row, { ...quantities });
      },
    },
  );
  const wanted = new Set(question.zones.map(({ name }) => name));
  const parts = dayPlan(zones, ({ row }) => ofRow.get(row) ?? noQuantities()).filter((part) =>
    wanted.has(part.zone.zone.name),
  );
  const without = zones.filter((each) => each.finding !== undefined && wanted.has(each.zone.name));
  return [
    [
      'Day',
      'Zone',
      'Walls',
      'People',
      'Crew-hours',
      'Labor-hours',
      heading('Cleaner', 'volume', system),
      heading('Water', 'volume', system),
      heading('Film', 'area', system),
      heading('Tape', 'length', system),
      'Waits',
    ],
    ...parts.flatMap((part) => partLines(part, question.factors)),
    ...without.map((each) => noNumbers(each)),
  ];
};

/** A line of a day, and lines below it for walls that its cell has no room for. */
function partLines(part: DayPart, factors: FactorsInForce): CellValue[][] {
  const { day, zone, ofZone, walls, share, first } = part;
  const { totals, finding } = zone;
  const cell = (value: number, kind: Kind): CellValue => quantityCell(value, kind, factors.system, finding);
  // A zone is masked before it is washed.
  const masks = first ? 1 : 0;
  const [named = '', ...more] = cutToLines(wallsNamed(walls), WALLS_LINE);
  const line = [
    day,
    zone.zone.name,
    named,
    factors.value('team.size') * factors.value('teams'),
    cell(totals.crewHours * ofZone, 'crewHours'),
    cell(totals.laborHours * ofZone, 'laborHours'),
    cell(
      share(({ concentrate }) => concentrate),
      'volume',
    ),
    cell(
      share(({ water }) => water),
      'volume',
    ),
    cell(totals.film * masks, 'area'),
    cell(totals.tape * masks, 'length'),
    waits(part, factors),
  ];
  return [line, ...more.map((names) => line.map((_cell, column) => (column === WALLS_COLUMN ? names : '')))];
}

function waits({ day, zone, first, last }: DayPart, factors: FactorsInForce): string {
  const later = zone.laterClasses.map((of) => classInWords(of)).join(', ');
  return [
    ...(day === 1 && first
      ? [`Samples are washed ${factorAmount('sample.wait', factors)} before, and accepted when dry.`]
      : []),
    ...(last && later !== '' ? [`Masked masonry is washed last, with ${later}.`] : []),
  ].join(' ');
}

/** A zone that cannot be worked out stands on no day, and says so. */
function noNumbers({ zone, finding }: ZoneEstimate): CellValue[] {
  const none = valueError(finding ?? '');
  return [none, zone.name, wallsNamed(zone.rows), ...Array.from({ length: 7 }, () => none), ''];
}
