import { addedQuantities, type QuantityId } from '../src/estimate/quantities';
import { unitRates } from '../src/estimate/unit-rates';
import { nothingHere } from '../src/quantity/problem';
import { answer, readChoice, readQuestion, type Question } from './arguments';
import { quantityCell } from './cells';
import type { Run } from './worksheet-function';

/** The parts of water, by the name that a user gives. */
export const waterParts = {
  prewet: 'preWetWater',
  below: 'belowWater',
  mist: 'mistWater',
  mix: 'mixWater',
  rinse: 'rinseWater',
  reclean: 'recleanWater',
} as const satisfies Record<string, QuantityId>;

/** The parts of the labor-hours and of the crew-hours, by the name that a user gives. */
export const hourParts = {
  scrape: 'scrapeHours',
  mask: 'maskHours',
  prewet: 'prewetHours',
  apply: 'applyHours',
  scrub: 'scrubHours',
  rinse: 'rinseHours',
  tend: 'tendHours',
  change: 'changeHours',
  below: 'belowHours',
  unmask: 'unmaskHours',
  glass: 'glassHours',
  move: 'moveHours',
  scaffold: 'scaffoldHours',
  brush: 'brushHours',
  reclean: 'recleanHours',
  zonesetup: 'zonesetupHours',
  sample: 'sampleHours',
  mobilize: 'mobilizeHours',
  protect: 'protectHours',
  setup: 'setupHours',
} as const satisfies Record<string, QuantityId>;

/** The alkalis, by the name that a user gives. */
export const neutralizerParts = {
  bicarbonate: 'bicarbonate',
  'soda ash': 'sodaAsh',
} as const satisfies Record<string, QuantityId>;

/**
 * What gives one quantity of a zone or of the job.
 * @param quantity the whole
 * @param parts its parts by the name that a user gives; the argument `part` stands before the headings then
 * @returns the function
 */
export function runQuantity(quantity: QuantityId, parts?: Readonly<Record<string, QuantityId>>): Run {
  return ([walls, zone, factors, ...rest]) => {
    const [part, headings] = parts ? rest : [undefined, rest[0]];
    const wanted = parts ? readChoice(part, 'part', Object.keys(parts)) : undefined;
    const id = wanted === undefined ? quantity : (parts?.[wanted] ?? quantity);
    const question = readQuestion(walls, zone, factors, headings);
    const { totals, finding } = answer(question);
    const { kind } = addedQuantities[quantity];
    const value = quantity === 'crewHours' && id !== quantity ? totals[id] / persons(question) : totals[id];
    return quantityCell(value, kind, question.factors.system, finding);
  };
}

const RATE = 'rate';

/** Works out the labor-hours of a zone or of the job, a part of them, or the washed area per labor-hour. */
export const runLaborHours: Run = (args) => {
  const [walls, zone, factors, part, headings] = args;
  if (readChoice(part, 'part', [...Object.keys(hourParts), RATE]) !== RATE) return laborHours(args);
  const question = readQuestion(walls, zone, factors, headings);
  const { totals, finding } = answer(question);
  if (totals.washedArea === 0)
    throw nothingHere('Nothing is washed here, so there is no area per labor-hour.');
  const { areaPerLaborHour } = unitRates(totals);
  return quantityCell(areaPerLaborHour, 'areaPerLaborHour', question.factors.system, finding);
};

const laborHours = runQuantity('laborHours', hourParts);

/** Persons of the whole crew: the parts are kept as labor-hours. */
function persons({ factors }: Question): number {
  return factors.value('team.size') * factors.value('teams');
}
