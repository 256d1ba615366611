import { tokensOf } from '../../src/spreadsheet/tokens';
import { callsWashdown } from '../../src/review/audit/washdown-calls';
import type { BookName } from '../xlsx/book';

/** Tells which formulas of a workbook need the add-in, be it over a name. */
export class Ours {
  /** The defined names that need it. */
  readonly names: readonly BookName[];
  readonly #called: ReadonlySet<string>;

  /**
   * Looks through the names.
   * @param names the defined names of the workbook
   */
  constructor(names: readonly BookName[]) {
    const called = new Set<string>();
    const uses = (formula: string): boolean => callsOrNames(formula, called);
    for (let before = -1; before < called.size;) {
      before = called.size;
      for (const { name, formula } of names) if (uses(formula)) called.add(name.toLowerCase());
    }
    this.#called = called;
    this.names = names.filter(({ name }) => called.has(name.toLowerCase()));
  }

  /**
   * Whether a formula calls a Washdown function, itself or over a name.
   * @param formula without `=`
   * @returns true where it shows #NAME? without the add-in
   */
  uses(formula: string): boolean {
    return callsOrNames(formula, this.#called);
  }
}

function callsOrNames(formula: string, called: ReadonlySet<string>): boolean {
  if (callsWashdown(formula)) return true;
  if (called.size === 0) return false;
  return tokensOf(formula).some(
    ({ kind, text }) => kind === 'name' && called.has(text.slice(text.lastIndexOf('!') + 1).toLowerCase()),
  );
}
