import type { FactorsInForce } from '../rules/read-factors';
import { upperTenth } from './student';

/** What an entry shows of a rate. */
export interface Shown {
  /** Unit time in any unit, above 0. */
  readonly unitTime: number;
  /** m2, above 0 */
  readonly area: number;
}

/** How far a rate in force is trusted against entries. */
export interface Beliefs {
  /** Entries that it is worth. */
  readonly prior: number;
  /** Degrees of freedom of the spread. */
  readonly degrees: number;
  /** Standard deviation of the logarithm of the unit times of large entries. */
  readonly spread: number;
  /** m2; an entry of this area weighs half. */
  readonly areaHalf: number;
}

/** A unit time of which both the rate in force and the entries are part. */
export interface Blend {
  readonly unitTime: number;
  /** Ends of its 80% range. */
  readonly low: number;
  readonly high: number;
  /** Weight of the entries, 0 to 1. */
  readonly weight: number;
}

/**
 * The beliefs in force.
 * @param factors the factors in force
 * @returns what the prior is worth
 */
export function beliefsOf(factors: FactorsInForce): Beliefs {
  return {
    prior: factors.value('rates.prior'),
    degrees: factors.value('rates.degrees'),
    spread: factors.value('rates.spread'),
    areaHalf: factors.value('rates.areaHalf'),
  };
}

/**
 * The weight of an entry: a small area shows less.
 * @param area m2
 * @param beliefs the beliefs in force
 * @param beliefs.areaHalf m2 at which it weighs half
 * @returns 0 to 1
 */
export function weightOf(area: number, { areaHalf }: Pick<Beliefs, 'areaHalf'>): number {
  return area / (area + areaHalf);
}

/** The logarithms of what entries show, by weight. */
export interface LogSums {
  readonly entries: number;
  /** Sum of the weights. */
  readonly weight: number;
  /** Weighted mean; 0 where there is no entry. */
  readonly mean: number;
  /** Weighted sum of squares about it. */
  readonly squares: number;
}

/**
 * Sums up what entries show.
 * @param shown the entries
 * @param beliefs the beliefs in force
 * @returns sums of the logarithms of their unit times
 */
export function logSums(shown: readonly Shown[], beliefs: Beliefs): LogSums {
  const logs = shown.map(({ unitTime, area }) => ({ y: Math.log(unitTime), w: weightOf(area, beliefs) }));
  const weight = logs.reduce((sum, { w }) => sum + w, 0);
  const mean = weight > 0 ? logs.reduce((sum, { y, w }) => sum + w * y, 0) / weight : 0;
  const squares = logs.reduce((sum, { y, w }) => sum + w * (y - mean) ** 2, 0);
  return { entries: shown.length, weight, mean, squares };
}

/**
 * The logarithm at which the prior of a unit time stands, so that its mean is the unit time in force.
 * @param inForce unit time in force
 * @param beliefs the beliefs in force
 * @param beliefs.spread standard deviation of the logarithm
 * @returns the logarithm
 */
export function priorLog(inForce: number, { spread }: Pick<Beliefs, 'spread'>): number {
  return Math.log(inForce) - spread ** 2 / 2;
}

/**
 * Blends a unit time in force with what entries show: unit times are log-normal, the one in force is worth some entries.
 * Normal with scaled inverse chi-squared. Source: Gelman and others, Bayesian Data Analysis, 3.3.
 * @param inForce unit time in force, above 0
 * @param shown what the entries show, in the same unit
 * @param beliefs how far the one in force is trusted
 * @returns the blend
 */
export function blend(inForce: number, shown: readonly Shown[], beliefs: Beliefs): Blend {
  const { prior, degrees, spread } = beliefs;
  const before = priorLog(inForce, beliefs);
  const { entries, weight, mean, squares } = logSums(shown, beliefs);
  const worth = prior + weight;
  const after = (prior * before + weight * mean) / worth;
  const freedom = degrees + entries;
  const apart = ((prior * weight) / worth) * (mean - before) ** 2;
  const variance = (degrees * spread ** 2 + squares + apart) / freedom;
  const unitTime = Math.exp(after + variance / 2);
  const reach = Math.exp(upperTenth(freedom) * Math.sqrt(variance / worth));
  return { unitTime, low: unitTime / reach, high: unitTime * reach, weight: weight / worth };
}
