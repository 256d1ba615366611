import { WashdownError } from '../../src/quantity/problem';
import { readFactors, type FactorsInForce } from '../../src/rules/read-factors';
import { changeSteps, type ChangesBetween } from '../../src/review/changes';
import { readWalls } from '../../src/walls/read-walls';
import { inSlices, type Turns } from '../shared/slices';
import { readSource, referenceText, type WallSource } from '../shared/wall-source';
import type { Formula, WorkbookPort } from '../workbook/port';

/** What changed since a baseline, and what that did. */
export interface ChangesSince extends ChangesBetween {
  readonly factors: FactorsInForce;
}

/**
 * What changed since a baseline, at the factors in force now.
 * @param port the workbook
 * @param source where walls, factors and headings stand
 * @param baseline name of the table of the baseline
 * @param turns lets others work in between
 * @param signal ends the work early
 * @returns the changes and the whole difference; undefined where the work was ended
 * @throws {Error} saying which of the two cannot be read, and why
 */
export async function changesSince(
  port: WorkbookPort,
  source: WallSource,
  baseline: string,
  turns: Turns,
  signal: AbortSignal,
): Promise<ChangesSince | undefined> {
  const [before, { walls, factors: range, headings }] = await Promise.all([
    port.readTable(baseline),
    readSource(port, source),
  ]);
  const factors = readFactors(range);
  const former = named(`The baseline ${baseline}`, () => readWalls(before, factors, headings));
  const latter = named('The walls', () => readWalls(walls, factors, headings));
  // A long table takes a turn of its own to be read.
  await turns.pause();
  const steps = changeSteps(former, latter, factors);
  const between = await inSlices(steps, turns, signal, () => undefined);
  return between && { ...between, factors };
}

/**
 * The formula that spills the same changes.
 * @param source where walls, factors and headings stand
 * @param baseline name of the table of the baseline
 * @returns the formula, without empty arguments at its end
 */
export function changesFormula({ walls, factors, headings }: WallSource, baseline: string): Formula {
  const args = [{ table: baseline }, walls, factors, headings].map((range) =>
    range ? referenceText(range) : '',
  );
  while (args.at(-1) === '') args.pop();
  return { formula: `=WASH.CHANGES(${args.join(',')})` };
}

function named<Rows>(whose: string, read: () => Rows): Rows {
  try {
    return read();
  } catch (error) {
    if (error instanceof WashdownError) throw new Error(`${whose}: ${error.message}`, { cause: error });
    throw error;
  }
}
