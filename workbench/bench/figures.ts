import { DIGITS, tidy } from '../../src/quantity/shown-number';

/** A figure of the benchmark, with what it is held to. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  /** What the value may be at most. */
  readonly most?: number;
  /** What the value must be at least. */
  readonly least?: number;
}

/**
 * Whether a figure misses its limit. A value that is no number does.
 * @param figure the figure
 * @returns true where it is held to a limit and misses it
 */
export function isMissed({ value, most = Infinity, least = -Infinity }: Figure): boolean {
  return !(value <= most && value >= least);
}

/**
 * The figures as a table.
 * @param figures the figures
 * @returns a line each: name, value, limit, and whether it is kept
 */
export function figureTable(figures: readonly Figure[]): string {
  const lines = figures.map((figure) => [
    figure.name,
    rounded(figure.value),
    limitOf(figure),
    limitOf(figure) === '' ? '' : isMissed(figure) ? 'MISSED' : 'kept',
  ]);
  const widths = [0, 1, 2, 3].map((column) => Math.max(...lines.map((line) => line[column]?.length ?? 0)));
  return lines
    .map((line) =>
      line
        .map((cell, column) =>
          column === 1 ? cell.padStart(widths[1] ?? 0) : cell.padEnd(widths[column] ?? 0),
        )
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

function limitOf({ most, least }: Figure): string {
  if (most !== undefined) return `at most ${most}`;
  return least === undefined ? '' : `at least ${least}`;
}

function rounded(value: number): string {
  return String(tidy(value, DIGITS.sentence));
}
