import { cellAddress } from './address';
import { findingKinds, type AuditFinding } from './audit-finding';
import { areaKey, type AuditedBook, type SheetArea } from './audited-book';
import { checkFindings, questionKey, type Question } from './check-findings';
import { formulaFindings } from './formula-findings';
import { relativeForm } from './move-formula';
import { NotFollowed } from './not-followed';
import { overrideFindings } from './overrides';
import {
  goneFormulas,
  placeKey,
  type PlacedFormula,
  type RememberedGroup,
  type StandingFormula,
} from './remembered';
import { Spills } from './spills';
import { typedBeside, typedOver } from './typed-over';
import { callsWashdown, readable } from './washdown-calls';
import { WorkOut, type AuditedFunction, type Call } from './work-out';

/** What the audit came to. */
export interface AuditReport {
  /** The Washdown formulas of the workbook. */
  readonly formulas: readonly StandingFormula[];
  /** Formulas that stood in cells when the workbook was last looked over, and do no more. */
  readonly gone: readonly StandingFormula[];
  /** How many of them show what they should. */
  readonly agree: number;
  /** What a reviewer should look at, what can cost most first. */
  readonly findings: readonly AuditFinding[];
}

/** How far the audit is. */
export interface AuditProgress {
  readonly done: number;
  readonly total: number;
}

/** What the audit works with. */
export interface AuditInput {
  readonly book: AuditedBook;
  /** Finds a Washdown function by its name, for example `WATER`. */
  readonly functionCalled: (name: string) => AuditedFunction | undefined;
  /** Formulas that stood in the workbook when it was last looked over. */
  readonly remembered: readonly RememberedGroup[];
  /** A formula over walls that are to be checked though no formula of the workbook may read them. */
  readonly alsoCheck?: string | undefined;
}

/**
 * Works every Washdown formula of a workbook out again and compares, step by step: between two steps the caller may
 * stop, or let others work.
 * @param input the workbook and what is known of it
 * @yields how many formulas of how many are done
 * @returns the report
 */
export function* audit(input: AuditInput): Generator<AuditProgress, AuditReport> {
  const { book, functionCalled, remembered } = input;
  const questions = new Questions();
  const worker = new WorkOut(book, functionCalled, (call) => {
    questions.take(call);
  });
  const found: PlacedFormula[] = [];
  for (const candidate of book.formulas()) {
    yield { done: 0, total: found.length };
    if (callsWashdown(candidate.formula)) found.push(candidate);
  }
  const total = found.length;
  const formulas: StandingFormula[] = [];
  const forms = new Map<string, string>();
  const findings: AuditFinding[] = [];
  const spills = new Spills();
  let agree = 0;
  for (const [done, candidate] of found.entries()) {
    yield { done, total };
    // Some hosts hand a formula over for every cell that it fills.
    if (spills.formulaOver(candidate) === candidate.formula) continue;
    const form = relativeForm(candidate.formula, candidate);
    formulas.push({ ...candidate, form });
    forms.set(placeKey(candidate), form);
    const seen = lookAt(book, worker, candidate, spills);
    if (seen.length === 0) agree++;
    findings.push(...seen);
  }
  const typed = new Map<string, AuditFinding>();
  for (const formula of formulas) {
    yield { done: total, total };
    for (const finding of typedBeside(book, formula, forms, spills)) typed.set(placeOf(finding), finding);
  }
  const gone = goneFormulas(book, remembered, formulas).filter(
    (formula) => spills.formulaOver(formula) === undefined,
  );
  for (const formula of gone) {
    const finding = typedOver(book, formula, formula.formula);
    typed.set(placeOf(finding), finding);
  }
  findings.push(...typed.values());
  if (input.alsoCheck !== undefined) alsoAsk(worker, input.alsoCheck);
  const checks = functionCalled('CHECKS');
  for (const question of questions.all()) {
    yield { done: total, total };
    if (checks) findings.push(...checkFindings(question, checks));
  }
  for (const area of questions.factorAreas()) findings.push(...overrideFindings(book, area));
  return { formulas, gone, agree, findings: inOrder(findings) };
}

/** The distinct walls, factors and headings that formulas ask about. */
class Questions {
  private readonly byKey = new Map<string, Question>();
  private readonly factors = new Map<string, SheetArea>();

  take(call: Call): void {
    const key = questionKey(call);
    if (key !== undefined && !this.byKey.has(key)) this.byKey.set(key, call);
    const area = call.get('factors')?.area;
    if (area) this.factors.set(areaKey(area), area);
  }

  all(): readonly Question[] {
    return [...this.byKey.values()];
  }

  factorAreas(): readonly SheetArea[] {
    return [...this.factors.values()];
  }
}

function lookAt(book: AuditedBook, worker: WorkOut, found: PlacedFormula, spills: Spills): AuditFinding[] {
  try {
    const outcome = worker.formula(found.formula, found);
    spills.add(found, found.formula, outcome);
    return formulaFindings(book, found, found.formula, outcome);
  } catch (error) {
    if (!(error instanceof NotFollowed)) throw error;
    return [
      {
        kind: 'not checked',
        sheet: found.sheet,
        address: cellAddress(found.row, found.column),
        what: `Not checked: ${error.message}.`,
        todo: 'Look at this formula yourself.',
        formula: readable(found.formula),
      },
    ];
  }
}

function alsoAsk(worker: WorkOut, formula: string): void {
  try {
    worker.formula(formula, { sheet: '', row: 1, column: 1 });
  } catch (error) {
    // Walls that are not there any more are no finding on a formula.
    if (!(error instanceof NotFollowed)) throw error;
  }
}

function placeOf({ sheet, address }: AuditFinding): string {
  return `${sheet}!${address}`;
}

function inOrder(findings: readonly AuditFinding[]): AuditFinding[] {
  const ranked = findings.map((finding, index) => ({
    finding,
    index,
    rank: findingKinds.indexOf(finding.kind),
  }));
  return ranked.sort((a, b) => a.rank - b.rank || a.index - b.index).map(({ finding }) => finding);
}
