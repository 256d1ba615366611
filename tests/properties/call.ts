import { expect } from 'vitest';
import { worksheetFunctions } from '../../functions/worksheet-functions';
import { isCellError, type CellValue } from '../../functions/worksheet-function';

/** A table that a function spilled, read by its headings. */
export type Line = Readonly<Record<string, CellValue>>;

/** A cell that must hold a text. */
export function text(cell: CellValue | undefined): string {
  if (typeof cell !== 'string') throw new Error(`A text was expected, not ${JSON.stringify(cell)}.`);
  return cell;
}

/** Calls a worksheet function as the host would. */
export function call(name: string, ...args: readonly unknown[]): CellValue | CellValue[][] {
  const found = worksheetFunctions.find((row) => row.name === name);
  if (found === undefined) throw new Error(`There is no function ${name}.`);
  return found.run(args);
}

/** Calls a function that gives one number. */
export function number(name: string, ...args: readonly unknown[]): number {
  const cell = call(name, ...args);
  if (typeof cell !== 'number') throw new Error(`${name} gave ${JSON.stringify(cell)}.`);
  return cell;
}

/** Calls a function that spills, and gives its lines by heading, the unit of a heading left out. */
export function lines(name: string, ...args: readonly unknown[]): Line[] {
  const spilled = call(name, ...args);
  if (!Array.isArray(spilled)) throw new Error(`${name} spilled nothing.`);
  const [head = [], ...body] = spilled;
  const headings = head.map((heading) => text(heading).replace(/ \([^)]*\)$/, ''));
  expect(new Set(headings).size).toBe(headings.length);
  return body.map((cells) => {
    expect(cells).toHaveLength(headings.length);
    return Object.fromEntries(headings.map((heading, index) => [heading, cells[index] ?? '']));
  });
}

/** A cell that must hold a number. */
export function numberIn(line: Line | undefined, heading: string): number {
  const cell = line?.[heading];
  if (typeof cell !== 'number') throw new Error(`${heading} holds ${JSON.stringify(cell)}.`);
  return cell;
}

/** The cells of a line that hold numbers, by heading. */
export function numbersIn(line: Line): Map<string, number> {
  return new Map(
    Object.entries(line).flatMap(([key, cell]) => (typeof cell === 'number' ? [[key, cell]] : [])),
  );
}

/** The messages of the cells of a line that hold errors, by heading. */
export function errorsIn(line: Line): Map<string, string> {
  return new Map(
    Object.entries(line).flatMap(([key, cell]) => (isCellError(cell) ? [[key, cell.message]] : [])),
  );
}

/** Expects two numbers to be one but for the rounding of the last digits. */
export function expectSame(ours: number, theirs: number, relative: number, what: string): void {
  const scale = Math.max(Math.abs(ours), Math.abs(theirs));
  if (!(Math.abs(ours - theirs) <= relative * scale)) {
    expect.fail(`${what}: ${String(ours)} is not ${String(theirs)}`);
  }
}
