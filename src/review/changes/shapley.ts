import { chance } from '../../estimate/chance';
import { measured, minus, nothing, type Difference, type Reached } from './changing-job';

/** Something that comes to a value with any of its changes made. */
export interface Game {
  readonly at: (made: ReadonlySet<number>) => Reached;
}

/** The part of a change. */
export interface Part {
  readonly mean: Difference;
  /** Standard error of the mean; 0 where it is exact. */
  readonly error: Difference;
}

/**
 * The part of each change: what it adds on average over every order (Shapley value), from every subset of the others.
 * @param count how many changes there are
 * @param game what they come to
 * @yields after each subset
 * @returns the parts, in the order of the changes
 */
export function* shapleyExact(count: number, game: Game): Generator<undefined, Part[]> {
  const reached: Reached[] = [];
  const sizes: number[] = [];
  for (let subset = 0; subset < 2 ** count; subset++) {
    const made = new Set<number>();
    for (let change = 0; change < count; change++) if (subset & (1 << change)) made.add(change);
    sizes.push(made.size);
    reached.push(game.at(made));
    yield;
  }
  const weights = orderShares(count);
  return Array.from({ length: count }, (_, change) => {
    const mean = nothing();
    for (const [subset, without] of reached.entries()) {
      const withIt = reached[subset | (1 << change)];
      if (subset & (1 << change) || withIt === undefined) continue;
      add(mean, minus(withIt, without), weights[sizes[subset] ?? 0] ?? 0);
    }
    return { mean, error: nothing() };
  });
}

/** The share of all orders in which exactly the changes of a subset come before a change, by the size of the subset. */
function orderShares(count: number): number[] {
  const shares = [1 / count];
  // size! (count - size - 1)! / count!
  for (let size = 1; size < count; size++) shares.push(((shares[size - 1] ?? 0) * size) / (count - size));
  return shares;
}

/**
 * The part of each change over drawn orders, each with its reversal. In each order the parts add up to the whole, so
 * that their means do too. After Castro, Gomez, Tejada, Polynomial calculation of the Shapley value based on sampling
 * (2009).
 * @param count how many changes there are
 * @param game what they come to
 * @param pairs how many orders are drawn
 * @param seed the same seed draws the same orders
 * @yields after each state
 * @returns the parts, in the order of the changes, with the standard error over the pairs
 */
export function* shapleySampled(
  count: number,
  game: Game,
  pairs: number,
  seed: number,
): Generator<undefined, Part[]> {
  const next = chance(seed);
  const sums = Array.from({ length: count }, nothing);
  const squares = Array.from({ length: count }, nothing);
  for (let pair = 0; pair < pairs; pair++) {
    const order = shuffled(count, next);
    const parts = Array.from({ length: count }, nothing);
    for (const way of [order, order.toReversed()]) {
      const made = new Set<number>();
      let last = game.at(made);
      for (const change of way) {
        made.add(change);
        const now = game.at(made);
        add(parts[change] ?? nothing(), minus(now, last), 1 / 2);
        last = now;
        yield;
      }
    }
    for (const [change, part] of parts.entries()) {
      add(sums[change] ?? nothing(), part, 1);
      add(squares[change] ?? nothing(), squared(part), 1);
    }
  }
  return sums.map((sum, change) => {
    const [mean, error] = [nothing(), nothing()];
    for (const id of measured) {
      mean[id] = sum[id] / pairs;
      const spread = (squares[change]?.[id] ?? NaN) / pairs - mean[id] ** 2;
      error[id] = Math.sqrt(Math.max(0, spread) / (pairs - 1));
    }
    return { mean, error };
  });
}

function shuffled(count: number, next: () => number): number[] {
  const order = Array.from({ length: count }, (_, index) => index);
  for (let last = count - 1; last > 0; last--) {
    const other = Math.floor(next() * (last + 1));
    [order[last], order[other]] = [order[other] ?? 0, order[last] ?? 0];
  }
  return order;
}

function add(to: Difference, what: Difference, times: number): void {
  for (const id of measured) to[id] += what[id] * times;
}

function squared(of: Difference): Difference {
  const result = nothing();
  for (const id of measured) result[id] = of[id] ** 2;
  return result;
}
