import { readQuestion } from '../../functions/arguments';
import { isPriced } from '../../src/estimate/price';
import { spreadSteps, type SpreadProgress, type SpreadResult } from '../../src/estimate/spread';
import type { FactorsInForce } from '../../src/rules/read-factors';
import { readRanges } from '../../src/rules/read-ranges';
import { inSlices, type Turns } from '../shared/slices';
import { readSource, type WallSource } from '../shared/wall-source';
import type { WorkbookPort } from '../workbook/port';
import { rangeColumns } from './range-tables';

/** How many times the factors are drawn. */
export const DRAWS = 10_000;

/** The job as a range, and what it was worked out from. */
export interface DrawnRanges {
  readonly result: SpreadResult;
  readonly factors: FactorsInForce;
  readonly table: string;
  readonly seed: number;
}

/** What the draws work with. */
export interface DrawInput {
  readonly port: WorkbookPort;
  readonly source: WallSource;
  /** Name of the table of ranges. */
  readonly table: string;
  readonly seed: number;
  readonly turns: Turns;
  readonly signal: AbortSignal;
  readonly progress: (progress: SpreadProgress) => void;
}

/**
 * Reads walls, factors and ranges, and draws, so that the pane answers in between.
 * @param input what the draws work with
 * @returns the ranges; undefined where the draws were stopped
 * @throws {WashdownError} naming what cannot be read
 */
export async function drawRanges(input: DrawInput): Promise<DrawnRanges | undefined> {
  const { port, source, table, seed, turns, signal, progress } = input;
  const [rows, { walls, factors: range, headings }] = await Promise.all([
    port.readTable(table),
    readSource(port, source),
  ]);
  const { zones, factors } = readQuestion(walls, '', range, headings);
  const ranges = readRanges(rangeColumns(rows), factors.system);
  const rankBy = isPriced(factors) ? 'price' : 'laborHours';
  // A long table takes a turn of its own to be read.
  await turns.pause();
  const steps = spreadSteps(zones, factors, ranges, { draws: DRAWS, seed, rankBy });
  const result = await inSlices(steps, turns, signal, progress);
  return result && { result, factors, table, seed };
}
