import { readQuestion, type Question } from '../../functions/arguments';
import { tracedInJob } from '../../functions/trace';
import type { Recorder } from '../../src/trace/recorder';
import { formulaFor, quoted } from '../shared/formulas';
import { functionNamed } from '../shared/job-summary';
import { placeOf, readSource, type FactorContent, type WallSource } from '../shared/wall-source';
import type { CellContent, Place, WorkbookPort } from '../workbook/port';

/** Walls, factors and headings as they were read, and where they stand. */
export interface AskedRanges {
  readonly walls: readonly (readonly CellContent[])[];
  readonly wallsAt: Place;
  readonly factors: readonly (readonly FactorContent[])[] | null;
  /** Left out where the factors stand in no cells. */
  readonly factorsAt?: Place;
  readonly headings: readonly (readonly CellContent[])[] | null;
  readonly headingsAt?: Place;
}

/** Which number is asked about. */
export interface Wanted {
  /** One of the names that TRACE takes. */
  readonly quantity: string;
  /** Empty for the whole job. */
  readonly zone: string;
  /** Label of one wall, or empty. */
  readonly wall: string;
}

/** A number with everything that was taken down for it. */
export interface AskedNumber extends Wanted {
  readonly ranges: AskedRanges;
  readonly question: Question;
  readonly rec: Recorder;
  readonly symbol: string;
  /** The formula that spills all of its lines; undefined where its ranges stand in no cells. */
  readonly formula: string | undefined;
}

/**
 * Works a number out and takes down how.
 * @param ranges the walls with their factors and headings
 * @param wanted which number
 * @returns the number and its record
 * @throws {Error} where there is no such number
 */
export function askNumber(ranges: AskedRanges, wanted: Wanted): AskedNumber {
  const { quantity, zone, wall } = wanted;
  const question = readQuestion(ranges.walls, zone, ranges.factors, ranges.headings);
  const { rec, symbol } = tracedInJob(quantity, question, wall);
  return { ...wanted, ranges, question, rec, symbol, formula: traceFormula(ranges, wanted) };
}

/**
 * The ranges of the chosen walls.
 * @param port the workbook
 * @param source where they stand
 * @returns the ranges with their places
 */
export async function rangesOf(port: WorkbookPort, source: WallSource): Promise<AskedRanges> {
  const { factors, headings } = source;
  return {
    ...(await readSource(port, source)),
    wallsAt: await placeOf(port, source.walls),
    ...(factors && { factorsAt: await placeOf(port, factors) }),
    ...(headings && { headingsAt: await placeOf(port, headings) }),
  };
}

function traceFormula(
  { wallsAt, factors, factorsAt, headings, headingsAt }: AskedRanges,
  { quantity, zone, wall }: Wanted,
): string | undefined {
  // Values within the formula of a cell stand in no range that another formula could name.
  if ((factors && !factorsAt) || (headings && !headingsAt)) return undefined;
  const source = {
    walls: wallsAt,
    ...(factorsAt && { factors: factorsAt }),
    ...(headingsAt && { headings: headingsAt }),
  };
  const asked = {
    quantity: quoted(quantity),
    ...(zone !== '' && { zone: quoted(zone) }),
    ...(wall !== '' && { wall: quoted(wall) }),
  };
  return formulaFor(functionNamed('TRACE'), source, asked).formula;
}
