/**
 * Things by a name of theirs, in the order in which the names first appear.
 * @param things the things
 * @param nameOf the name of one
 * @returns by name, the things that have it
 */
export function groupedBy<T>(things: readonly T[], nameOf: (thing: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const thing of things) {
    const name = nameOf(thing);
    const known = groups.get(name);
    if (known) known.push(thing);
    else groups.set(name, [thing]);
  }
  return groups;
}
