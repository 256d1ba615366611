import { hourParts, neutralizerParts, waterParts } from '../../functions/quantity-functions';
import { priceParts } from '../../functions/bid-price';
import { traceNames } from '../../functions/trace-names';
import { worksheetFunctions } from '../../functions/worksheet-functions';
import { addedQuantities, type QuantityId } from '../../src/estimate/quantities';
import { areaAddress, cellAddress, parseAddress } from '../../src/spreadsheet/address';
import { AuditedBook, type SheetArea } from '../../src/review/audit/audited-book';
import { isRows, type Outcome, type Value } from '../../src/review/audit/outcome';
import type { SheetPlace } from '../../src/review/audit/references';
import { rootError, type RootError } from '../../src/review/audit/root-error';
import { filledBy } from '../../src/review/audit/spills';
import { callsWashdown } from '../../src/review/audit/washdown-calls';
import { WorkOut, type Call } from '../../src/review/audit/work-out';
import type { CellContent, Place, WorkbookPort } from '../workbook/port';
import type { AskedRanges, Wanted } from './asked-number';

/** The number that a cell shows. */
export interface NumberInCell {
  readonly ranges: AskedRanges;
  readonly wanted: Wanted;
}

const byName = new Map(worksheetFunctions.map((called) => [called.name, called]));

/** The number of each function, by the name that TRACE takes. */
const ofFunction: Readonly<Record<string, string>> = {
  WATER: 'water',
  MASKING: 'masking',
  TAPE: 'tape',
  CLEANER: 'cleaner',
  RUNOFF: 'runoff',
  NEUTRALIZER: 'neutralizer',
  LABORHOURS: 'labor-hours',
  CREWHOURS: 'crew-hours',
  BIDPRICE: 'bid price',
  CLASS: 'class',
  GOVERNING: 'governing',
  GOVERNOR: 'governing',
};
const partsOf: Readonly<Record<string, Readonly<Record<string, QuantityId>>>> = {
  WATER: waterParts,
  LABORHOURS: hourParts,
  CREWHOURS: hourParts,
  NEUTRALIZER: neutralizerParts,
  BIDPRICE: priceParts,
};
const SPILLS = ['SCHEDULE', 'WALLROWS'];
const ofHeading: Readonly<Record<string, string>> = {
  class: 'class',
  cleaner: 'class',
  ceiling: 'governing',
  'set by': 'governing',
  'price per area': 'price',
  'area per labor-hour': 'labor-hours',
};

/**
 * The number that the selected cell shows: by its Washdown formula, or by its place in what SCHEDULE or WALLROWS fills.
 * @param port the workbook
 * @param signal ends the reading of the cells
 * @returns which number it is, and the walls that it is of
 * @throws {Error} that says why the cell shows none
 */
export async function numberInSelection(port: WorkbookPort, signal: AbortSignal): Promise<NumberInCell> {
  const selected = await port.selection();
  const area = parseAddress(selected.address);
  if (!area) throw new Error('No cell is selected.');
  const at = { sheet: selected.sheet, row: area.top, column: area.left };
  const book = new AuditedBook(await port.tables(), await port.names());
  for await (const block of port.scan(() => undefined, signal)) book.add(block);
  const named = placeText(at);
  const root = rootError(book, at, (formula, from) => workerOf(book).formula(formula, from));
  if (root) throw new CellInError(named, root);
  const found = callIn(book, at);
  if (!found) throw new Error(`There is no Washdown formula in ${named}.`);
  const ranges = found.call && rangesIn(found.call);
  const wanted = found.call && wantedBy(found.name, found.call, found.outcome, found.from, at);
  if (!ranges || !wanted) throw new Error(`${named} shows no single number that can be followed.`);
  return { ranges, wanted };
}

/** The selected cell shows an error, and no number. */
export class CellInError extends Error {
  /** The cells to look at: the formula that the error starts at, where it is another, and the input to blame. */
  readonly places: readonly Place[];

  /**
   * Says where the error starts.
   * @param named the selected cell
   * @param root where the error starts
   */
  constructor(named: string, { at, message, cause }: RootError) {
    const start = placeText(at);
    const because = start === named ? '' : ` because of ${start}`;
    super(`${named} is in error${because}: ${message}`);
    this.places = [...(start === named ? [] : [at]), ...(cause ? [cause] : [])].map((place) => ({
      sheet: place.sheet,
      address: cellAddress(place.row, place.column),
    }));
  }
}

function placeText({ sheet, row, column }: SheetPlace): string {
  return `${sheet}!${cellAddress(row, column)}`;
}

function workerOf(book: AuditedBook, seen?: (call: Call, name: string) => void): WorkOut {
  return new WorkOut(book, (name) => byName.get(name), seen);
}

interface FoundCall {
  readonly name: string;
  readonly call: Call | undefined;
  readonly outcome: Outcome;
  /** The cell of the formula. */
  readonly from: SheetPlace;
}

function callIn(book: AuditedBook, at: SheetPlace): FoundCall | undefined {
  const calls: { call: Call; name: string }[] = [];
  const worker = workerOf(book, (call, name) => calls.push({ call, name }));
  const callOf = (from: SheetPlace, formula: string): FoundCall => {
    calls.length = 0;
    const outcome = worker.formula(formula, from);
    const [first] = calls;
    return { name: first?.name ?? '', call: first?.call, outcome, from };
  };
  const own = book.formula(at.sheet, at.row, at.column);
  // Some hosts hand a formula over for every cell that it fills.
  for (const { formula, ...from } of book.formulas()) {
    if (from.sheet !== at.sheet || from.row > at.row || from.column > at.column) continue;
    if (!SPILLS.some((name) => formula.toUpperCase().includes(name)) || !callsWashdown(formula)) continue;
    const found = callOf(from, formula);
    const filled = filledBy(from, found.outcome);
    if (filled && isIn(filled, at)) return found;
  }
  return own !== undefined && callsWashdown(own) ? callOf(at, own) : undefined;
}

function isIn({ bottom, right }: SheetArea, { row, column }: SheetPlace): boolean {
  return row <= bottom && column <= right;
}

function rangesIn(call: Call): AskedRanges | undefined {
  const rows = (name: string) => {
    const value = call.get(name)?.value;
    return Array.isArray(value) ? (value as CellContent[][]) : null;
  };
  const at = (name: string): Place | undefined => {
    const area = call.get(name)?.area;
    return area && { sheet: area.sheet, address: areaAddress(area) };
  };
  const [walls, wallsAt, factorsAt, headingsAt] = [rows('walls'), at('walls'), at('factors'), at('headings')];
  if (!walls || !wallsAt) return undefined;
  return {
    walls,
    wallsAt,
    factors: rows('factors'),
    headings: rows('headings'),
    ...(factorsAt && { factorsAt }),
    ...(headingsAt && { headingsAt }),
  };
}

function wantedBy(
  name: string,
  call: Call,
  outcome: Outcome,
  from: SheetPlace,
  at: SheetPlace,
): Wanted | undefined {
  const given = (argument: string) => {
    const value = call.get(argument)?.value;
    return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
  };
  if (SPILLS.includes(name)) return isRows(outcome) ? spilled(name, outcome, from, at) : undefined;
  const whole = ofFunction[name];
  const part = partsOf[name]?.[given('part').toLowerCase().replaceAll('-', '')];
  const quantity = part === undefined ? whole : addedQuantities[part].heading.toLowerCase();
  return quantity === undefined ? undefined : { quantity, zone: given('zone'), wall: '' };
}

function spilled(
  name: string,
  rows: readonly (readonly Value[])[],
  from: SheetPlace,
  at: SheetPlace,
): Wanted | undefined {
  const line = rows[at.row - from.row];
  const heading = words(rows[0]?.[at.column - from.column])
    .replace(/ \([^)]*\)$/, '')
    .toLowerCase();
  const quantity = ofHeading[heading] ?? heading;
  if (line === undefined || line === rows[0] || !traceNames.includes(quantity)) return undefined;
  const label = words(line[0]);
  return name === 'SCHEDULE' ? { quantity, zone: label, wall: '' } : { quantity, zone: '', wall: label };
}

function words(value: Value | undefined): string {
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
}
