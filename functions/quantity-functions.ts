import { addedQuantities, type QuantityId } from '../src/estimate/quantities';
import { answer, readChoice, readQuestion } from './arguments';
import { quantityCell } from './cells';
import type { Run } from './worksheet-function';

/** The parts of water, by the name that a user gives. */
export const waterParts = {
  prewet: 'preWetWater',
  mix: 'mixWater',
  rinse: 'rinseWater',
} as const satisfies Record<string, QuantityId>;

/** The parts of the crew-hours, by the name that a user gives. */
export const hourParts = {
  scrape: 'scrapeHours',
  mask: 'maskHours',
  prewet: 'prewetHours',
  apply: 'applyHours',
  scrub: 'scrubHours',
  rinse: 'rinseHours',
  unmask: 'unmaskHours',
  move: 'moveHours',
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
    return quantityCell(totals[id], addedQuantities[quantity].kind, question.factors.system, finding);
  };
}
