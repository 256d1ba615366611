import { checksOf } from '../../functions/checks';
import { worksheetFunctions } from '../../functions/worksheet-functions';
import { audit, type AuditReport } from '../../src/review/audit/audit';
import { AuditedBook } from '../../src/review/audit/audited-book';
import { afterCalculating } from '../../src/review/audit/out-of-date';
import { groupFormulas, type RememberedGroup } from '../../src/review/audit/remembered';
import { RULES_VERSION } from '../../src/rules/version';
import { keep, readKept } from '../shared/kept-text';
import { formulaFor } from '../shared/formulas';
import type { WallSource } from '../shared/wall-source';
import type { WorkbookPort } from '../workbook/port';
import { readRemembered, rememberedText } from '../shared/remembered-text';
import { inSlices, type Turns } from '../shared/slices';

/** What is being done, and how far it is. */
export interface ReviewProgress {
  readonly doing: 'Reading the cells' | 'Working the formulas out' | 'The workbook calculates';
  readonly done: number;
  readonly total: number;
}

/** The outcome of a review. */
export interface Review extends AuditReport {
  /** False where the workbook does not keep which formulas stood where. */
  readonly remembered: boolean;
}

/** What a review works with. */
export interface ReviewInput {
  readonly port: WorkbookPort;
  readonly source: WallSource | undefined;
  readonly turns: Turns;
  readonly signal: AbortSignal;
  readonly progress: (progress: ReviewProgress) => void;
}

const byName = new Map(worksheetFunctions.map((called) => [called.name, called]));

/**
 * Reads the workbook, works its Washdown formulas out again and compares. Where a cell differs, the workbook
 * calculates and is read once more: what differs no longer was out of date.
 * @param input what it works with
 * @returns the review; undefined where it was stopped
 */
export async function runReview(input: ReviewInput): Promise<Review | undefined> {
  const { port, progress } = input;
  const remembered = readRemembered(await readKept(port, 'formulas'));
  const rules = { was: await readKept(port, 'rules'), is: RULES_VERSION };
  const first = await look(input, remembered);
  if (!first) return undefined;
  let report = first;
  if (first.findings.some(({ kind }) => kind === 'differs')) {
    progress({ doing: 'The workbook calculates', done: 0, total: 0 });
    await port.calculate();
    const second = await look(input, remembered);
    if (!second) return undefined;
    report = { ...second, findings: afterCalculating(first.findings, second.findings, rules) };
  }
  await input.turns.pause();
  const kept = await keepFormulas(port, report);
  if (kept && report.formulas.length > 0) await keep(port, 'rules', RULES_VERSION);
  return { ...report, remembered: kept };
}

/**
 * Keeps which formulas stand where, those on the way to the totals too, together with those that were typed over and not
 * put back.
 * @param port the workbook
 * @param report the formulas
 * @returns false where the workbook does not keep it
 */
export function keepFormulas(
  port: WorkbookPort,
  report: Pick<AuditReport, 'formulas' | 'followers' | 'gone'>,
): Promise<boolean> {
  return keep(port, 'formulas', formulasText(report));
}

/**
 * The text that is kept of the formulas.
 * @param report the formulas that stand, and those that are gone
 * @returns the text
 */
export function formulasText({
  formulas,
  followers,
  gone,
}: Pick<AuditReport, 'formulas' | 'followers' | 'gone'>): string {
  return rememberedText(groupFormulas([...formulas, ...followers, ...gone]));
}

async function look(
  { port, source, turns, signal, progress }: ReviewInput,
  remembered: readonly RememberedGroup[],
): Promise<AuditReport | undefined> {
  const book = new AuditedBook(await port.tables(), await port.names());
  const reading = (done: number, total: number) => {
    progress({ doing: 'Reading the cells', done, total });
  };
  for await (const block of port.scan(reading, signal)) {
    book.add(block);
    await turns.pause();
  }
  if (signal.aborted) return undefined;
  const checks = byName.get('CHECKS');
  const work = audit({
    book,
    functionCalled: (name) => byName.get(name),
    remembered,
    checksOf,
    alsoCheck: source && checks && formulaFor(checks, source).formula,
  });
  return inSlices(work, turns, signal, ({ done, total }) => {
    progress({ doing: 'Working the formulas out', done, total });
  });
}
