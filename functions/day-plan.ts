import type { ZoneEstimate } from '../src/estimate/schedule';
import type { Kind } from '../src/quantity/systems';
import { classInWords } from '../src/rules/cleaner-classes';
import type { FactorsInForce } from '../src/rules/read-factors';
import { factorAmount } from '../src/site/amount';
import { dayPlan, type DayPart } from '../src/site/day-plan';
import { wallsNamed } from '../src/site/named';
import { answer, readQuestion } from './arguments';
import { heading, quantityCell, valueError } from './cells';
import type { CellValue, Run } from './worksheet-function';

/** Spills what is done where on each working day, with whom and with what. */
export const runDayPlan: Run = ([walls, zone, factors, headings]) => {
  const question = readQuestion(walls, zone, factors, headings);
  const { system } = question.factors;
  // A zone by itself stands on the days that it has in the whole job.
  const { zones } = answer({ ...question, zones: question.job });
  const wanted = new Set(question.zones.map(({ name }) => name));
  const parts = dayPlan(zones).filter((part) => wanted.has(part.zone.zone.name));
  const without = zones.filter((each) => each.finding !== undefined && wanted.has(each.zone.name));
  return [
    [
      'Day',
      'Zone',
      'Walls',
      'Persons',
      'Crew-hours',
      'Labor-hours',
      heading('Cleaner', 'volume', system),
      heading('Water', 'volume', system),
      heading('Film', 'area', system),
      heading('Tape', 'length', system),
      'Waits',
    ],
    ...parts.map((part) => partLine(part, question.factors)),
    ...without.map((each) => noNumbers(each)),
  ];
};

function partLine(part: DayPart, factors: FactorsInForce): CellValue[] {
  const { day, zone, ofZone, first } = part;
  const { totals, finding } = zone;
  const cell = (value: number, kind: Kind): CellValue => quantityCell(value, kind, factors.system, finding);
  // A zone is masked before it is washed.
  const masks = first ? 1 : 0;
  return [
    day,
    zone.zone.name,
    wallsNamed(zone.zone.rows),
    factors.value('team.size') * factors.value('teams'),
    cell(totals.crewHours * ofZone, 'crewHours'),
    cell(totals.laborHours * ofZone, 'laborHours'),
    cell(totals.concentrate * ofZone, 'volume'),
    cell(totals.water * ofZone, 'volume'),
    cell(totals.film * masks, 'area'),
    cell(totals.tape * masks, 'length'),
    waits(part, factors),
  ];
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
