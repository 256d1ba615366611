import { Adds } from './adds';
import type { Step, Ways } from './ways';

/** Everything that the rules of the bid line look at. */
export interface BidBook {
  readonly ways: Ways;
  readonly adds: Adds;
  /** Every formula that a Washdown formula reaches. */
  readonly way: ReadonlySet<Step>;
  /** The formulas that ask for a price. */
  readonly prices: readonly Step[];
  /** Every formula that a price reaches. */
  readonly priceWay: ReadonlySet<Step>;
  readonly totals: readonly Step[];
}

/**
 * Puts together what the rules of the bid line look at.
 * @param ways the formulas of the workbook, joined
 * @returns the way of the prices, and the totals
 */
export function bidBook(ways: Ways): BidBook {
  const { steps } = ways;
  const prices = steps.filter(({ asked }) => asked.some(({ name }) => name === 'BIDPRICE'));
  return {
    ways,
    adds: new Adds(ways),
    way: ways.fromAll(steps.filter(({ asked }) => asked.length > 0)),
    prices,
    priceWay: ways.fromAll(prices),
    totals: steps.filter(({ role }) => role.is === 'total'),
  };
}
