import type { CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import type { RowRecord, ZoneRecord } from '../trace/recorder';
import type { Quantities, QuantityId } from './quantities';

const priced = [
  'labor',
  'crew',
  'film',
  'tape',
  'water',
  'equipment',
  'access',
  'bicarbonate',
  'sodaAsh',
  'disposal',
  'mobilization',
  'protection',
  'fixed',
  'supervision',
  'contingency',
  'overhead',
  'profit',
  'minimum',
] as const;

/** What things cost and the mark-ups, in the user's money and base units. */
export type Prices = Readonly<Record<(typeof priced)[number], number>> & {
  /** Money for a litre of concentrate, by class. */
  readonly cleaner: Readonly<Record<CleanerClass, number>>;
  /** Whether the price is that of the whole crew. */
  readonly byCrew: boolean;
};

const CENTS = 100;

/**
 * Whether a price can be told: labor is the greatest part, and a price without it would mislead.
 * @param factors the factors in force
 * @returns true where a price of labor is given, be it 0
 */
export function isPriced(factors: FactorsInForce): boolean {
  return factors.overridden('price.labor') || factors.overridden('price.crew');
}

/**
 * The prices in force.
 * @param factors the factors in force
 * @returns prices and mark-ups
 */
export function pricesOf(factors: FactorsInForce): Prices {
  const prices = Object.fromEntries(priced.map((id) => [id, factors.value(`price.${id}`)]));
  return {
    ...(prices as Record<(typeof priced)[number], number>),
    cleaner: {
      0: 0,
      1: factors.value('price.cleaner.1'),
      2: factors.value('price.cleaner.2'),
      3: factors.value('price.cleaner.3'),
    },
    byCrew: factors.overridden('price.crew'),
  };
}

/**
 * The price of the concentrate of a row.
 * @param concentrate volume, L
 * @param classToUse the class that the row is washed with
 * @param prices the prices in force
 * @param rec takes down the line
 * @returns money
 */
export function cleanerPrice(
  concentrate: number,
  classToUse: CleanerClass,
  prices: Prices,
  rec?: RowRecord,
): number {
  const price = concentrate * prices.cleaner[classToUse];
  if (rec) {
    if (classToUse === 0) rec.line('priceCleaner', 0, '0');
    else rec.line('priceCleaner', price, { class: classToUse });
  }
  return price;
}

/** The sums that belong to the job, by the part of the price that each is. */
export const jobSums = {
  priceMobilization: 'mobilization',
  priceProtection: 'protection',
  priceFixed: 'fixed',
} as const satisfies Partial<Record<QuantityId, keyof Prices>>;

/**
 * Prices the quantities of a row or a zone. Every part is in proportion to a quantity, so that rows add up to their
 * zone. Nothing is rounded here.
 * @param of quantities in base units, with the price of the cleaner and the sums of the job; takes the parts of the price
 * @param prices the prices in force
 * @param rec takes down the lines, of the row or the zone
 */
export function addPrice(of: Quantities, prices: Prices, rec?: ZoneRecord): void {
  of.priceLabor = prices.byCrew ? of.crewHours * prices.crew : of.laborHours * prices.labor;
  of.priceMasking = of.film * prices.film + of.tape * prices.tape;
  of.priceWater = of.water * prices.water;
  of.priceEquipment = of.hireDays * prices.equipment;
  of.priceAccess = of.hireDays * prices.access;
  of.priceNeutralizer = of.bicarbonate * prices.bicarbonate + of.sodaAsh * prices.sodaAsh;
  of.priceDisposal = of.runoff * prices.disposal;
  const direct =
    of.priceLabor +
    of.priceCleaner +
    of.priceMasking +
    of.priceWater +
    of.priceEquipment +
    of.priceAccess +
    of.priceNeutralizer +
    of.priceDisposal +
    of.priceMobilization +
    of.priceProtection +
    of.priceFixed;
  of.priceSupervision = of.priceLabor * prices.supervision;
  const supervised = direct + of.priceSupervision;
  of.priceContingency = supervised * prices.contingency;
  of.priceOverhead = (supervised + of.priceContingency) * prices.overhead;
  of.priceProfit = (supervised + of.priceContingency + of.priceOverhead) * prices.profit;
  of.price = supervised + of.priceContingency + of.priceOverhead + of.priceProfit;
  if (!rec) return;
  rec.line(prices.byCrew ? 'priceCrew' : 'priceLabor', of.priceLabor);
  rec.line('priceMasking', of.priceMasking);
  rec.line('priceWater', of.priceWater);
  rec.line('priceEquipment', of.priceEquipment);
  rec.line('priceAccess', of.priceAccess);
  rec.line('priceNeutralizer', of.priceNeutralizer);
  rec.line('priceDisposal', of.priceDisposal);
  rec.line('priceDirect', direct);
  rec.line('priceSupervision', of.priceSupervision);
  rec.line('priceContingency', of.priceContingency);
  rec.line('priceOverhead', of.priceOverhead);
  rec.line('priceProfit', of.priceProfit);
  rec.line('priceBefore', of.price);
}

/**
 * A price as it is bid: rounded to cents, once.
 * @param price unrounded
 * @returns the price to two decimals
 */
export function bidPrice(price: number): number {
  return Math.round(price * CENTS) / CENTS;
}
