import { readFactors } from '../rules/read-factors';
import { beliefsOf, logSums, priorLog, type Beliefs, type Blend, type Shown } from './blend';
import { unitTimeOf, valuesOf, type Observation, type ObservedRate, type RateFactor } from './rates';
import { upperTenth } from './student';

/** What several jobs show of a factor. */
export interface PooledRate extends Pick<ObservedRate, 'blended' | 'low' | 'high' | 'weight'> {
  readonly factor: RateFactor;
  /** By the name of each job. */
  readonly jobs: ReadonlyMap<string, readonly Observation[]>;
  readonly observations: readonly Observation[];
  /** The starting value, in the base unit. */
  readonly start: number;
}

/** What the entries of one job show, by factor. */
export type ObservedJob = ReadonlyMap<RateFactor, readonly Observation[]>;

/**
 * The rates that several jobs show together. The prior is the starting value of each factor.
 * @param jobs what each job shows, by its name
 * @returns one for each factor that a job shows
 */
export function pooledRates(jobs: ReadonlyMap<string, ObservedJob>): PooledRate[] {
  const starting = readFactors(null);
  const beliefs = beliefsOf(starting);
  const shown = new Set([...jobs.values()].flatMap((job) => [...job.keys()]));
  return [...shown].map((factor) => {
    const { kind, id } = factor;
    const own = new Map(
      [...jobs].flatMap(([name, job]) => {
        const observations = job.get(factor);
        return observations ? [[name, observations] as const] : [];
      }),
    );
    const unitTimes = [...own.values()].map((observations) =>
      observations.map(({ value, area }) => ({ unitTime: unitTimeOf(value, kind), area })),
    );
    const start = starting.value(id);
    return {
      factor,
      jobs: own,
      observations: [...own.values()].flat(),
      start,
      ...valuesOf(pool(unitTimeOf(start, kind), unitTimes, beliefs), kind),
    };
  });
}

/**
 * Pools what jobs show of a unit time: the entries of one job share its luck, so that a job counts by its own mean, with
 * the variance between jobs added to that within. Random effects by moments: DerSimonian and Laird, 1986; the prior
 * counts as so many entries, each of a job of its own.
 * @param start unit time of the prior, above 0
 * @param jobs what each job shows, in the same unit, an entry at least
 * @param beliefs how far the prior is trusted
 * @returns the pooled unit time of a job to come, the ends of its 80% range, and the weight of the jobs
 */
export function pool(start: number, jobs: readonly (readonly Shown[])[], beliefs: Beliefs): Blend {
  const { prior, degrees, spread } = beliefs;
  const sums = jobs.map((shown) => logSums(shown, beliefs));
  const freedom = degrees + total(sums.map(({ entries }) => entries - 1));
  const within = (degrees * spread ** 2 + total(sums.map(({ squares }) => squares))) / freedom;
  const means = sums.map(({ mean, weight }) => ({ mean, variance: within / weight }));
  const between = betweenJobs(means);
  const precisions = means.map(({ variance }) => 1 / (variance + between));
  const ofJobs = total(precisions);
  // The entries that the prior is worth are each of a job of its own.
  const ofPrior = prior / (within + between);
  const worth = ofPrior + ofJobs;
  const shown = total(means.map(({ mean }, place) => mean * (precisions[place] ?? 0)));
  const mean = (ofPrior * priorLog(start, beliefs) + shown) / worth;
  const unitTime = Math.exp(mean + (within + between) / 2);
  const reach = Math.exp(upperTenth(degrees + jobs.length) / Math.sqrt(worth));
  return { unitTime, low: unitTime / reach, high: unitTime * reach, weight: ofJobs / worth };
}

/**
 * The variance between jobs, by moments. Source: DerSimonian and Laird, 1986.
 * @param jobs the mean of each and its variance
 * @returns the variance; 0 where the jobs differ no more than their own variances let expect
 */
export function betweenJobs(jobs: readonly { readonly mean: number; readonly variance: number }[]): number {
  const weights = jobs.map(({ variance }) => 1 / variance);
  const sum = total(weights);
  const mean = total(jobs.map((job, place) => job.mean * (weights[place] ?? 0))) / sum;
  const squares = total(jobs.map((job, place) => (weights[place] ?? 0) * (job.mean - mean) ** 2));
  const scale = sum - total(weights.map((weight) => weight ** 2)) / sum;
  // A single job tells nothing of how jobs differ.
  return jobs.length < 2 ? 0 : Math.max(0, (squares - (jobs.length - 1)) / scale);
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
