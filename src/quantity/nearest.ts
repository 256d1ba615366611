import { distance } from 'fastest-levenshtein';
import { comparable } from './cell';

const OFFERED = 3;

/**
 * The names nearest to one that is not known, to be offered and never taken by themselves.
 * @param seen the name that was typed
 * @param known the names that exist
 * @returns up to three names, nearest first
 */
export function nearest(seen: string, known: readonly string[]): string[] {
  const wanted = comparable(seen);
  return known
    .map((name) => {
      const candidate = comparable(name);
      const within = candidate.includes(wanted) || wanted.includes(candidate);
      // A part of a name ("limestone band") is nearer than its letters say.
      return { name, far: distance(wanted, candidate) * (within ? 0.25 : 1) };
    })
    .sort((a, b) => a.far - b.far)
    .slice(0, OFFERED)
    .map(({ name }) => name);
}
