import { observe } from '../../src/actuals/rates';
import type { ObservedJob } from '../../src/actuals/pool-jobs';
import { readActuals } from '../../src/actuals/read-actuals';
import type { System } from '../../src/quantity/systems';
import { readFactors } from '../../src/rules/read-factors';
import { readZones } from '../../src/walls/read-zones';
import { selectZones } from '../../src/walls/zones';
import { readWallSource, type Reference, type WallSource } from '../../taskpane/shared/wall-source';
import { readKeptTexts } from '../xlsx/kept-parts';
import { cellAddress, parseArea, type Area } from '../xlsx/address';
import type { Archive } from '../xlsx/archive';
import { BadFile } from '../xlsx/bad-file';
import type { Book } from '../xlsx/book';
import { isCellError } from '../xlsx/cell-value';
import { workbookPart } from '../xlsx/parts';
import { readBook } from '../xlsx/read-book';

/** What the recorded work of a workbook shows. */
export interface JobRead {
  readonly observed: ObservedJob;
  readonly system: System;
  /** Entries that show no rate. */
  readonly without: number;
}

const ACTUALS: Reference = { table: 'Actuals' };
const USUAL: WallSource = { walls: { table: 'Walls' }, factors: { table: 'Factors' } };

/**
 * Reads the recorded work of a workbook and its walls, as the file holds them.
 * @param archive the parts of the file
 * @returns what it shows; undefined where it has no table of recorded work
 * @throws {BadFile} where the file is no workbook or has no walls
 * @throws {WashdownError} with every cell that cannot be read
 */
export function readJob(archive: Archive): JobRead | undefined {
  const book = readBook(archive);
  const actuals = cellsAt(book, ACTUALS);
  if (actuals === undefined) return undefined;
  const kept = readKeptTexts(archive, workbookPart(archive)).source;
  const source = kept === undefined ? USUAL : keptSource(kept);
  const walls = cellsAt(book, source.walls);
  if (walls === undefined)
    throw new BadFile('There is a table Actuals, and no table Walls to compare it with.');
  const factors = readFactors(source.factors && cellsAt(book, source.factors));
  const headings = source.headings && cellsAt(book, source.headings);
  const zones = selectZones(readZones(walls, factors, headings), '');
  const entries = readActuals(actuals, zones, factors.system, headings);
  const { observed, without } = observe(entries, zones, factors);
  return {
    observed,
    system: factors.system,
    without: without.reduce((sum, each) => sum + each.entries.length, 0),
  };
}

function keptSource(kept: string): WallSource {
  try {
    return readWallSource(kept);
  } catch {
    throw new BadFile(
      'What Set up saved about the walls cannot be read. Choose the walls again under Set up.',
    );
  }
}

/** The cells of a table with its headings, or of a range; undefined where it is not there. */
function cellsAt(book: Book, reference: Reference): unknown[][] | undefined {
  const place = areaOf(book, reference);
  const sheet = book.sheets.find(({ name }) => name === place?.sheet);
  if (place === undefined || sheet === undefined) return undefined;
  const { top, bottom, left, right } = place.area;
  return range(top, bottom).map((row) =>
    range(left, right).map((column) => {
      const value = sheet.cells.get(cellAddress(row, column))?.value ?? null;
      return isCellError(value) ? value.error : value;
    }),
  );
}

function areaOf(book: Book, reference: Reference): { sheet: string; area: Area } | undefined {
  if (!('table' in reference)) return { sheet: reference.sheet, area: parseArea(reference.address) };
  const table = book.tables.find(({ name }) => name.toLowerCase() === reference.table.toLowerCase());
  if (table === undefined) return undefined;
  const { area, totalsRows, sheet } = table;
  return { sheet, area: { ...area, bottom: area.bottom - totalsRows } };
}

function range(first: number, last: number): number[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index);
}
