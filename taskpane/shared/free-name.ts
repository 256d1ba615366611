/**
 * A name that is not taken: the wanted one, or with a number behind it.
 * @param wanted the name
 * @param taken the names in use, in any case
 * @param gap what stands before the number
 * @returns the name
 */
export function freeName(wanted: string, taken: readonly string[], gap: string): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  let name = wanted;
  for (let count = 2; used.has(name.toLowerCase()); count++) name = `${wanted}${gap}${String(count)}`;
  return name;
}
