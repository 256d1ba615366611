import ExcelJS from 'exceljs';
import type { Bundle } from '../engine/bundle';
import { estimateBook } from '../estimate/estimate-book';
import { RULES_VERSION } from '../../src/rules/version';
import type { WallSource } from '../../taskpane/shared/wall-source';
import { writeKeptTexts } from '../xlsx/write-kept-parts';
import { openArchive, packArchive } from '../xlsx/archive';
import { workbookPart } from '../xlsx/parts';
import { addActuals } from './actuals-sheet';
import { addAlternates } from './alternates-sheet';
import { addBid } from './bid-sheet';
import { addEstimate } from './estimate-sheet';
import { addFactors } from './factors-sheet';
import { addPrice } from './price-sheet';
import { addSpill } from './spill-sheets';
import { addBaseline, addWalls } from './walls-sheet';
import type { Job } from './wall-line';

// The pane finds the walls at once.
const SOURCE: WallSource = { walls: { table: 'Walls' }, factors: { table: 'Factors' } };

// A fixed date, so that the same data always gives the same workbook.
const MADE = new Date(Date.UTC(2026, 0, 5));

/**
 * Makes the bid workbook of a job, its formulas calculated.
 * @param job the job
 * @param bundle the built functions
 * @returns the file
 * @throws {Error} where the workbook cannot be calculated
 */
export async function makeWorkbook(job: Job, bundle: Bundle): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  workbook.created = MADE;
  workbook.modified = MADE;
  addBid(workbook, job);
  addWalls(workbook, job);
  addFactors(workbook, job);
  addEstimate(workbook, job);
  addSpill(workbook, job, 'Schedule');
  addSpill(workbook, job, 'Rows');
  addPrice(workbook, job);
  addSpill(workbook, job, 'Options');
  addBaseline(workbook, job);
  addSpill(workbook, job, 'Changes');
  addAlternates(workbook, job);
  addSpill(workbook, job, 'Alternates');
  addSpill(workbook, job, 'Trace');
  addSpill(workbook, job, 'Checks');
  addSpill(workbook, job, 'Factors in force');
  addSpill(workbook, job, 'Materials');
  addSpill(workbook, job, 'Sources');
  addActuals(workbook, job);
  addSpill(workbook, job, 'Progress');
  addSpill(workbook, job, 'Rates');
  const bytes = new Uint8Array(await workbook.xlsx.writeBuffer());
  const { archive } = await estimateBook(openArchive(bytes), bundle, true);
  const parts = new Map(archive);
  writeKeptTexts(parts, workbookPart(parts), {
    source: JSON.stringify(SOURCE),
    rules: RULES_VERSION,
  });
  return packArchive(parts);
}
