import type { CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import type { Quantities, QuantityId } from './quantities';

/** What things cost, in the user's money and base units. */
export interface Prices {
  readonly labour: number;
  readonly cleaner: number;
  readonly film: number;
  readonly tape: number;
  readonly water: number;
  readonly equipment: number;
  readonly access: number;
  readonly bicarbonate: number;
  readonly sodaAsh: number;
  readonly disposal: number;
  readonly contingency: number;
  readonly overhead: number;
  readonly profit: number;
}

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
  const ofCleaner =
    classToUse === undefined || classToUse === 0 ? undefined : (`price.cleaner.${classToUse}` as const);
  if (rec) {
    rec.factor('labourPrice', 'price.labour');
    if (ofCleaner && classToUse) {
      rec.factor(`cleanerPrice_${classToUse}`, ofCleaner);
      rec.line(
        'cleanerPrice@',
        `cleanerPrice_${classToUse}`,
        factors.value(ofCleaner),
        'moneyPerVolume',
        'priceCleaner',
      );
    }
    rec.factor('filmPrice', 'price.film');
    rec.factor('tapePrice', 'price.tape');
    rec.factor('waterPrice', 'price.water');
    rec.factor('equipmentPrice', 'price.equipment');
    rec.factor('accessPrice', 'price.access');
    rec.factor('bicarbonatePrice', 'price.bicarbonate');
    rec.factor('sodaAshPrice', 'price.sodaAsh');
    rec.factor('disposalPrice', 'price.disposal');
    rec.factor('contingency', 'price.contingency');
    rec.factor('overhead', 'price.overhead');
    rec.factor('profit', 'price.profit');
  }
  return {
    labour: factors.value('price.labour'),
    cleaner: ofCleaner ? factors.value(ofCleaner) : 0,
    film: factors.value('price.film'),
    tape: factors.value('price.tape'),
    water: factors.value('price.water'),
    equipment: factors.value('price.equipment'),
    access: factors.value('price.access'),
    bicarbonate: factors.value('price.bicarbonate'),
    sodaAsh: factors.value('price.sodaAsh'),
    disposal: factors.value('price.disposal'),
    contingency: factors.value('price.contingency'),
    overhead: factors.value('price.overhead'),
    profit: factors.value('price.profit'),
  };
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
  const line = (symbol: Extract<QuantityId, `price${string}`>, expression: string) => {
    rec.line(symbol + at, expression.replaceAll('~', at), of[symbol], 'money', symbol);
  };
  line('priceLabour', 'crewHours~ * labourPrice');
  line('priceCleaner', prices.cleaner === 0 ? '0' : 'concentrate~ * cleanerPrice@');
  line('priceMasking', 'film~ * filmPrice + tape~ * tapePrice');
  line('priceWater', 'water~ * waterPrice');
  line('priceEquipment', 'days~ * equipmentPrice');
  line('priceAccess', 'days~ * accessPrice');
  line('priceNeutralizer', 'bicarbonate~ * bicarbonatePrice + sodaAsh~ * sodaAshPrice');
  line('priceDisposal', 'runoff~ * disposalPrice');
  rec.line(
    `priceDirect${at}`,
    'priceLabour~ + priceCleaner~ + priceMasking~ + priceWater~ + priceEquipment~ + priceAccess~ + priceNeutralizer~ + priceDisposal~'.replaceAll(
      '~',
      at,
    ),
    direct,
    'money',
    'priceDirect',
  );
  line('priceContingency', 'priceDirect~ * contingency');
  line('priceOverhead', '(priceDirect~ + priceContingency~) * overhead');
  line('priceProfit', '(priceDirect~ + priceContingency~ + priceOverhead~) * profit');
  line('price', 'priceDirect~ + priceContingency~ + priceOverhead~ + priceProfit~');
}

/**
 * A price as it is bid: rounded to cents, once.
 * @param price unrounded
 * @returns the price to two decimals
 */
export function bidPrice(price: number): number {
  return Math.round(price * CENTS) / CENTS;
}
