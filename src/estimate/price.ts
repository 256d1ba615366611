import type { CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import type { Quantities, QuantityId } from './quantities';

const priced = [
  'labour',
  'film',
  'tape',
  'water',
  'equipment',
  'access',
  'bicarbonate',
  'sodaAsh',
  'disposal',
  'contingency',
  'overhead',
  'profit',
] as const;

/** What things cost and the mark-ups, in the user's money and base units. */
export type Prices = Readonly<Record<(typeof priced)[number] | 'cleaner', number>>;

const CENTS = 100;

/**
 * Whether a price can be told: labour is the greatest part, and a price without it would mislead.
 * @param factors the factors in force
 * @returns true where the price of labour is given
 */
export function isPriced(factors: FactorsInForce): boolean {
  return factors.value('price.labour') > 0;
}

/**
 * The prices in force for a class of cleaner.
 * @param classToUse the class to use; undefined where nothing is washed
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns prices and mark-ups
 */
export function pricesOf(
  classToUse: CleanerClass | undefined,
  factors: FactorsInForce,
  rec?: Recorder,
): Prices {
  const prices = Object.fromEntries(priced.map((id) => [id, factors.value(`price.${id}`)]));
  let cleaner = 0;
  if (classToUse) {
    const id = `price.cleaner.${classToUse}` as const;
    cleaner = factors.value(id);
    rec?.line('cleanerPrice@', `price_cleaner_${classToUse}`, cleaner, 'moneyPerVolume', 'priceCleaner');
  }
  return { ...prices, cleaner } as Prices;
}

/**
 * Prices the quantities of a row or a zone. Every part is in proportion to a quantity, so that rows add up to their
 * zone. Nothing is rounded here.
 * @param of quantities in base units; takes the parts of the price
 * @param prices the prices in force
 * @param at where the trace stands: `#` for a row, `@` for a zone
 * @param rec takes down the lines
 */
export function addPrice(of: Quantities, prices: Prices, at: '#' | '@', rec?: Recorder): void {
  of.priceLabour = of.crewHours * prices.labour;
  of.priceCleaner = of.concentrate * prices.cleaner;
  of.priceMasking = of.film * prices.film + of.tape * prices.tape;
  of.priceWater = of.water * prices.water;
  of.priceEquipment = of.days * prices.equipment;
  of.priceAccess = of.days * prices.access;
  of.priceNeutralizer = of.bicarbonate * prices.bicarbonate + of.sodaAsh * prices.sodaAsh;
  of.priceDisposal = of.runoff * prices.disposal;
  const direct =
    of.priceLabour +
    of.priceCleaner +
    of.priceMasking +
    of.priceWater +
    of.priceEquipment +
    of.priceAccess +
    of.priceNeutralizer +
    of.priceDisposal;
  of.priceContingency = direct * prices.contingency;
  of.priceOverhead = (direct + of.priceContingency) * prices.overhead;
  of.priceProfit = (direct + of.priceContingency + of.priceOverhead) * prices.profit;
  of.price = direct + of.priceContingency + of.priceOverhead + of.priceProfit;
  if (!rec) return;
  const line = (symbol: PriceSymbol, expression: string): void => {
    const value = symbol === 'priceDirect' ? direct : of[symbol];
    rec.line(symbol + at, expression.replaceAll('~', at), value, 'money', symbol);
  };
  line('priceLabour', 'crewHours~ * price_labour');
  line('priceCleaner', prices.cleaner === 0 ? '0' : 'concentrate~ * cleanerPrice@');
  line('priceMasking', 'film~ * price_film + tape~ * price_tape');
  line('priceWater', 'water~ * price_water');
  line('priceEquipment', 'days~ * price_equipment');
  line('priceAccess', 'days~ * price_access');
  line('priceNeutralizer', 'bicarbonate~ * price_bicarbonate + sodaAsh~ * price_sodaAsh');
  line('priceDisposal', 'runoff~ * price_disposal');
  line(
    'priceDirect',
    'priceLabour~ + priceCleaner~ + priceMasking~ + priceWater~ + priceEquipment~ + priceAccess~ + priceNeutralizer~ + priceDisposal~',
  );
  line('priceContingency', 'priceDirect~ * price_contingency');
  line('priceOverhead', '(priceDirect~ + priceContingency~) * price_overhead');
  line('priceProfit', '(priceDirect~ + priceContingency~ + priceOverhead~) * price_profit');
  line('price', 'priceDirect~ + priceContingency~ + priceOverhead~ + priceProfit~');
}

type PriceSymbol = Extract<QuantityId, `price${string}`> | 'priceDirect';

/**
 * A price as it is bid: rounded to cents, once.
 * @param price unrounded
 * @returns the price to two decimals
 */
export function bidPrice(price: number): number {
  return Math.round(price * CENTS) / CENTS;
}
