import { comparable } from './cell';

const OFFERED = 3;

/**
 * The names nearest to one that is not known, to be offered and never taken by themselves.
 * @param seen the name that was typed
 * @param known the names that exist
 * @param most how many at most
 * @returns the names, nearest first; up to three where no other number is given
 */
export function nearest(seen: string, known: readonly string[], most = OFFERED): string[] {
  const wanted = comparable(seen);
  return known
    .map((name) => {
      const candidate = comparable(name);
      const within = candidate.includes(wanted) || wanted.includes(candidate);
      // A part of a name ("limestone band") is nearer than its letters say.
      return { name, far: distance(wanted, candidate) * (within ? 0.25 : 1) };
    })
    .sort((a, b) => a.far - b.far)
    .slice(0, most)
    .map(({ name }) => name);
}

/** Levenshtein's distance: letters put in, taken out or exchanged. */
function distance(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let i = 0; i < from.length; i++) {
    const next = [i + 1];
    for (let j = 0; j < to.length; j++) {
      const exchanged = (row[j] ?? 0) + (from[i] === to[j] ? 0 : 1);
      next.push(Math.min(exchanged, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    }
    row = next;
  }
  return row[to.length] ?? 0;
}
