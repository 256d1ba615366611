import { AuditedBook, type AuditedName } from '../../src/review/audit/audited-book';
import { audit } from '../../src/review/audit/audit';
import { cellAddress } from '../../src/spreadsheet/address';
import { callsWashdown, readable } from '../../src/review/audit/washdown-calls';
import { referenceParts } from '../../src/spreadsheet/reference';
import { tokensOf } from '../../src/spreadsheet/tokens';
import { worksheetFunctions } from '../../functions/worksheet-functions';
import type { Place, WorkbookPort } from '../workbook/port';

/** What would become of a workbook whose formulas are replaced by their values. */
export interface PlainPlan {
  /** Formulas that need the add-in, themselves or over a name or a spill. */
  readonly places: readonly Place[];
  /** Those of them that show no value yet. */
  readonly unready: readonly Place[];
  /** Defined names that need the add-in, and keep needing it. */
  readonly names: readonly AuditedName[];
}

const NO_VALUE = ['#NAME?', '#BUSY!', '#GETTING_DATA', '#SPILL!', ''];
const byName = new Map(worksheetFunctions.map((called) => [called.name, called]));

/**
 * Looks which formulas of the workbook need the add-in.
 * @param port the workbook
 * @returns where they stand, and what else is to be known
 */
export async function planPlain(port: WorkbookPort): Promise<PlainPlan> {
  const book = new AuditedBook(await port.tables(), await port.names());
  for await (const block of port.scan(() => undefined, new AbortController().signal)) book.add(block);
  const names = namesThatCall(book.names);
  const called = new Set(names.map(({ name }) => name.toLowerCase()));
  // The audit knows which formulas merely show in the cells that another one fills.
  const ours = standing(book);
  const spills = new Set(ours.map(({ sheet, address }) => `${sheet}!${address}`));
  const others = [...book.formulas()].flatMap(({ sheet, row, column, formula }) =>
    !callsWashdown(formula) && (usesName(formula, called) || readsSpill(formula, sheet, spills))
      ? [{ sheet, address: cellAddress(row, column), row, column }]
      : [],
  );
  const places = [...ours, ...others];
  return {
    places: places.map(({ sheet, address }) => ({ sheet, address })),
    unready: places
      .filter(({ sheet, row, column }) => NO_VALUE.includes(String(book.value(sheet, row, column))))
      .map(({ sheet, address }) => ({ sheet, address })),
    names,
  };
}

/**
 * A name that needs the add-in, in a sentence.
 * @param name the name
 * @returns what it stands for
 */
export function nameText({ name, refersTo }: AuditedName): string {
  return `The name ${name} stands for ${readable(refersTo)} and needs the add-in.`;
}

function standing(book: AuditedBook) {
  const work = audit({ book, functionCalled: (name) => byName.get(name), remembered: [] });
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value.formulas.map(({ sheet, row, column }) => ({
    sheet,
    row,
    column,
    address: cellAddress(row, column),
  }));
}

function namesThatCall(names: readonly AuditedName[]): AuditedName[] {
  const called = new Set<string>();
  const uses = ({ refersTo }: AuditedName) => callsWashdown(refersTo) || usesName(refersTo, called);
  for (let before = -1; before < called.size;) {
    before = called.size;
    for (const name of names) if (uses(name)) called.add(name.name.toLowerCase());
  }
  return names.filter(({ name }) => called.has(name.toLowerCase()));
}

function usesName(formula: string, called: ReadonlySet<string>): boolean {
  return (
    called.size > 0 &&
    tokensOf(formula).some(
      ({ kind, text }) => kind === 'name' && called.has(text.slice(text.lastIndexOf('!') + 1).toLowerCase()),
    )
  );
}

/** `A1#` finds no spill where there are plain values in its place. */
function readsSpill(formula: string, own: string, spills: ReadonlySet<string>): boolean {
  const tokens = tokensOf(formula);
  return tokens.some(({ kind, text }, index) => {
    if (kind !== 'reference' || tokens[index + 1]?.text !== '#') return false;
    const { sheet = own, rest } = referenceParts(text);
    return spills.has(`${sheet}!${rest.replace(/\$/g, '').toUpperCase()}`);
  });
}
