import { worksheetFunctions } from '../../functions/worksheet-functions';
import type { CellValue } from '../../functions/worksheet-function';
import { WashdownError } from '../../src/quantity/problem';

/** Calls a worksheet function of the catalogue with its arguments in order. */
export function call(name: string, ...args: readonly unknown[]): CellValue | CellValue[][] {
  const found = worksheetFunctions.find((row) => row.name === name);
  if (found === undefined) throw new Error(`no function ${name}`);
  return found.run(args);
}

/** What a function gives where it gives one number. */
export function number(name: string, ...args: readonly unknown[]): number {
  const result = call(name, ...args);
  if (typeof result !== 'number') throw new Error(`${name} gave ${JSON.stringify(result)}`);
  return result;
}

/** What a function spills. */
export function spill(name: string, ...args: readonly unknown[]): CellValue[][] {
  const result = call(name, ...args);
  if (!Array.isArray(result)) throw new Error(`${name} gave ${JSON.stringify(result)}`);
  return result;
}

/** The cells of one column of a spill, below its heading; a unit in brackets behind the heading does not count. */
export function column(spilled: readonly CellValue[][], heading: string): CellValue[] {
  const place = (spilled[0] ?? []).findIndex(
    (cell) => typeof cell === 'string' && cell.replace(/ \([^)]*\)$/, '') === heading,
  );
  if (place < 0) throw new Error(`no column ${heading}`);
  return spilled.slice(1).map((line) => line[place] ?? '');
}

/** The error that a call throws: `input` for #VALUE!, `nothing` for #N/A, and the whole message. */
export function refusal(work: () => unknown): { type: string; message: string } {
  try {
    work();
  } catch (error) {
    if (!(error instanceof WashdownError)) throw error;
    const types = new Set(error.problems.map(({ type }) => type));
    return { type: [...types].join(' and '), message: error.message };
  }
  throw new Error('nothing was refused');
}
