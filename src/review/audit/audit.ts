import { cellAddress, parseAddress } from '../../spreadsheet/address';
import { findingKinds, type AuditFinding, type FindingPlace } from './audit-finding';
import { areaKey, type AuditedBook, type SheetArea } from './audited-book';
import { bidBook } from './bid/bid-book';
import { bidLineFindings } from './bid/bid-line';
import { Ways, type Asked, type Step } from './bid/ways';
import type { KnownWalls } from './bid/zones-missing';
import { byCause, type CausedFinding } from './cause';
import { checkFindings, questionKey, type ChecksOf, type Question } from './check-findings';
import { formulaFindings } from './formula-findings';
import { relativeForm } from '../../spreadsheet/move-formula';
import { NotFollowed } from '../../spreadsheet/not-followed';
import { isError, isErrorText, isRows } from './outcome';
import type { SheetPlace } from './references';
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
import { answerOf, WorkOut, type AuditedFunction, type Call } from './work-out';

/** What the audit came to. */
export interface AuditReport {
  /** The Washdown formulas of the workbook. */
  readonly formulas: readonly StandingFormula[];
  /** The ordinary formulas that the result of a Washdown formula reaches. */
  readonly followers: readonly StandingFormula[];
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
  /** The findings of CHECKS with the walls that each is about; left out, each is about the walls as a whole. */
  readonly checksOf?: ChecksOf | undefined;
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
  let asked: Asked[] = [];
  const worker = new WorkOut(book, functionCalled, (call, name) => {
    questions.take(call);
    asked.push(askedBy(call, name));
  });
  const ways = new Ways(book);
  const found: PlacedFormula[] = [];
  const ordinary: PlacedFormula[] = [];
  for (const candidate of book.formulas()) {
    yield { done: 0, total: found.length };
    if (callsWashdown(candidate.formula)) found.push(candidate);
    else ordinary.push(candidate);
  }
  const total = found.length;
  const formulas: StandingFormula[] = [];
  const forms = new Map<string, string>();
  const findings: CausedFinding[] = [];
  const spills = new Spills();
  let agree = 0;
  for (const [done, candidate] of found.entries()) {
    yield { done, total };
    // Some hosts hand a formula over for every cell that it fills.
    if (spills.formulaOver(candidate) === candidate.formula) continue;
    const form = relativeForm(candidate.formula, candidate);
    formulas.push({ ...candidate, form });
    forms.set(placeKey(candidate), form);
    asked = [];
    const seen = lookAt(book, worker, candidate, spills);
    ways.add(candidate, asked, spills.areaFrom(candidate));
    if (seen.length === 0) agree++;
    findings.push(...seen);
  }
  // What is asked from here on is asked by no cell.
  asked = [];
  const typed = new Map<string, AuditFinding>();
  const gives = (formula: string, at: SheetPlace): boolean => {
    try {
      const outcome = worker.formula(formula, at);
      return isRows(outcome) || !isError(outcome);
    } catch (error) {
      if (error instanceof NotFollowed) return false;
      throw error;
    }
  };
  for (const formula of formulas) {
    yield { done: total, total };
    for (const finding of typedBeside(book, formula, forms, spills, gives))
      typed.set(placeOf(finding), finding);
  }
  // A workbook without Washdown formulas has no bid line to follow.
  for (const candidate of formulas.length > 0 ? ordinary : []) {
    yield { done: total, total };
    if (spills.formulaOver(candidate) === undefined) ways.add(candidate, [], undefined);
  }
  const nearlyDone = { done: total, total };
  yield* ways.join(nearlyDone);
  const bid = bidBook(ways);
  const followers = [...bid.way].filter(({ asked: ofIt }) => ofIt.length === 0).map(standing);
  const zonesOf = (of: Asked) => knownWalls(of, questions, functionCalled);
  for (const finding of yield* bidLineFindings(bid, zonesOf, nearlyDone)) {
    // A finding that knows the formula says more.
    if (finding.kind !== 'typed over') findings.push(finding);
    else if (!typed.has(placeOf(finding))) typed.set(placeOf(finding), finding);
  }
  const gone = goneFormulas(book, remembered, [...formulas, ...followers]).filter(
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
    if (checks) findings.push(...checkFindings(book, question, checks, input.checksOf));
  }
  for (const area of questions.factorAreas()) findings.push(...overrideFindings(book, area));
  return { formulas, followers, gone, agree, findings: inOrder(byCause(findings, inError(ways))) };
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

  asking(key: string): Question | undefined {
    return this.byKey.get(key);
  }

  all(): readonly Question[] {
    return [...this.byKey.values()];
  }

  factorAreas(): readonly SheetArea[] {
    return [...this.factors.values()];
  }
}

function lookAt(book: AuditedBook, worker: WorkOut, found: PlacedFormula, spills: Spills): CausedFinding[] {
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

function askedBy(call: Call, name: string): Asked {
  const given = (argument: string) => {
    const value = call.get(argument)?.value;
    return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
  };
  return { name, zone: given('zone'), part: given('part'), question: questionKey(call) ?? '' };
}

/** The zones of the walls of a call, and what its function gives for the whole job. */
function knownWalls(
  asked: Asked,
  questions: Questions,
  functionCalled: AuditInput['functionCalled'],
): KnownWalls | undefined {
  const question = questions.asking(asked.question);
  const [schedule, called] = ['SCHEDULE', asked.name].map(functionCalled);
  if (!question || !schedule || !called) return undefined;
  const own: Readonly<Record<string, unknown>> = { zone: null, part: asked.part === '' ? null : asked.part };
  const args = ({ parameters }: AuditedFunction) =>
    parameters.map(({ name }) => (name in own ? own[name] : (question.get(name)?.value ?? null)));
  const lines = answerOf(schedule, args(schedule));
  const whole = answerOf(called, args(called));
  if (!isRows(lines) || isRows(whole)) return undefined;
  const zones = lines
    .slice(1)
    .flatMap(([zone = '']) => (typeof zone === 'string' && zone !== '' ? [zone] : []));
  return { zones, whole };
}

/** The cells in error that the result of a cell reaches. */
function inError(ways: Ways): (place: FindingPlace) => FindingPlace[] {
  return ({ sheet, address }) => {
    const cell = parseAddress(address);
    const start = cell && ways.at({ sheet, row: cell.top, column: cell.left });
    return [...(start ? ways.from(start) : [])].flatMap((step) =>
      isErrorText(ways.book.value(step.sheet, step.row, step.column))
        ? [{ sheet: step.sheet, address: cellAddress(step.row, step.column) }]
        : [],
    );
  };
}

function standing({ sheet, row, column, formula, form }: Step): StandingFormula {
  return { sheet, row, column, formula, form };
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
