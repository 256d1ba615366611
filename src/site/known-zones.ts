import { comparable } from '../quantity/cell';

/** A zone by its name and the labels of its walls. */
export interface NamedWalls {
  readonly zone: string;
  readonly walls: readonly string[];
}

// A zone is the same one while both share more than half of the walls: then no two zones can both be it.
const SAME_ABOVE = 0.5;

/**
 * Knows zones again: first by their walls, so that a renamed zone is found, then by their names, so that a zone whose
 * walls were renamed is found.
 * @param kept zones as they were
 * @param present zones as they are
 * @returns by name of the present zone, the zone that it was
 */
export function knownZones<Kept extends NamedWalls>(
  kept: readonly Kept[],
  present: readonly NamedWalls[],
): Map<string, Kept> {
  const known = new Map<string, Kept>();
  const taken = new Set<Kept>();
  const pairs = kept
    .flatMap((old) =>
      present.map((now) => ({
        old,
        now,
        alike: likeness(old.walls, now.walls),
        named: comparable(old.zone) === comparable(now.zone),
      })),
    )
    .filter(({ alike, named }) => alike > SAME_ABOVE || named)
    .sort(
      (a, b) =>
        Number(b.alike > SAME_ABOVE) - Number(a.alike > SAME_ABOVE) ||
        b.alike - a.alike ||
        Number(b.named) - Number(a.named),
    );
  for (const { old, now } of pairs) {
    if (known.has(now.zone) || taken.has(old)) continue;
    known.set(now.zone, old);
    taken.add(old);
  }
  return known;
}

/** The share of the longer list that both have. */
function likeness(some: readonly string[], others: readonly string[]): number {
  const labels = new Set(some.map(comparable));
  const common = others.filter((label) => labels.has(comparable(label))).length;
  return common / Math.max(some.length, others.length, 1);
}
