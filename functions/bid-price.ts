import { bidPrice, isPriced } from '../src/estimate/price';
import type { QuantityId } from '../src/estimate/quantities';
import { unitRates } from '../src/estimate/unit-rates';
import { badInput, nothingHere } from '../src/quantity/problem';
import type { FactorsInForce } from '../src/rules/read-factors';
import { answer, readChoice, readQuestion } from './arguments';
import { quantityCell } from './cells';
import type { Run } from './worksheet-function';

/** The parts of the price, by the name that a user gives. */
export const priceParts = {
  labor: 'priceLabor',
  cleaner: 'priceCleaner',
  masking: 'priceMasking',
  water: 'priceWater',
  equipment: 'priceEquipment',
  access: 'priceAccess',
  neutralizer: 'priceNeutralizer',
  disposal: 'priceDisposal',
  mobilization: 'priceMobilization',
  protection: 'priceProtection',
  fixed: 'priceFixed',
  supervision: 'priceSupervision',
  contingency: 'priceContingency',
  overhead: 'priceOverhead',
  profit: 'priceProfit',
  minimum: 'priceMinimum',
} as const satisfies Record<string, QuantityId>;

const RATE = 'rate';
const choices = [...Object.keys(priceParts), RATE];

/**
 * Refuses a price that would leave out its greatest part.
 * @param factors the factors in force
 * @throws {WashdownError} where no price of labor is given
 */
export function requirePrice(factors: FactorsInForce): void {
  if (isPriced(factors)) return;
  throw badInput(
    'The price of labor is not given. Accepted: a factor price.labor, the price of one person for one hour, or price.crew, the price of the whole crew for one hour; 0 where labor has no price.',
  );
}

/** Works out the price of a zone or of the job, or a part of it. */
export const runBidPrice: Run = ([walls, zone, factors, part, headings]) => {
  const wanted = readChoice(part, 'part', choices);
  const question = readQuestion(walls, zone, factors, headings);
  requirePrice(question.factors);
  const { totals, finding } = answer(question);
  const { system } = question.factors;
  if (wanted === RATE) {
    if (totals.washedArea === 0) throw nothingHere('Nothing is washed here, so there is no price per area.');
    return quantityCell(unitRates(totals).pricePerArea, 'moneyPerArea', system, finding);
  }
  const id = priceParts[wanted as keyof typeof priceParts] as QuantityId | undefined;
  return quantityCell(id === undefined ? bidPrice(totals.price) : totals[id], 'money', system, finding);
};
