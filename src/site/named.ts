import type { WallRow } from '../walls/wall-row';

// More labels than this are counted: a long list hides the rest of the line.
const LABELS_NAMED = 12;

/**
 * Walls by their labels.
 * @param rows the rows
 * @returns for example `S-1, S-2 and 5 more`
 */
export function wallsNamed(rows: readonly WallRow[]): string {
  return listed(rows.map(({ wall }) => wall));
}

/**
 * The materials of rows, each once.
 * @param rows the rows
 * @returns for example `Limestone, Marble`
 */
export function materialsNamed(rows: readonly WallRow[]): string {
  return listed([...new Set(rows.map(({ material }) => material.name))]);
}

/**
 * Names in a line, a long list cut short and counted.
 * @param names the names
 * @param between what stands between two of them
 * @returns the line
 */
export function listed(names: readonly string[], between = ', '): string {
  const rest = names.length - LABELS_NAMED;
  return rest > 0
    ? `${names.slice(0, LABELS_NAMED).join(between)} and ${String(rest)} more`
    : names.join(between);
}
