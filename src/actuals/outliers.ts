import { constants } from '../rules/constants';

// Fewer have no middle half to speak of.
const FEWEST = 4;

/**
 * The entries that lie far from the others, by the logarithm of the value that they show: beyond the middle half by more
 * than so many times its width. Source: Tukey, Exploratory Data Analysis, fences.
 * @param observations what the entries show
 * @returns those that lie far off
 */
export function outliersOf<O extends { readonly value: number }>(observations: readonly O[]): O[] {
  if (observations.length < FEWEST) return [];
  const logs = observations.map(({ value }) => Math.log(value)).sort((a, b) => a - b);
  const [low, high] = [quantile(logs, 0.25), quantile(logs, 0.75)];
  const reach = constants.fence.value * (high - low) + constants.guard.value;
  return observations.filter(({ value }) => {
    const log = Math.log(value);
    return log < low - reach || log > high + reach;
  });
}

/** Between the two nearest of the sorted values, in proportion. */
function quantile(sorted: readonly number[], share: number): number {
  const place = share * (sorted.length - 1);
  const [below = NaN, above = below] = sorted.slice(Math.floor(place));
  return below + (above - below) * (place - Math.floor(place));
}
