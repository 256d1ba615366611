import { factorIdOf, readFactors } from '../../rules/read-factors';
import { areaAddress, cellAddress } from '../../spreadsheet/address';
import { matchHeadings } from '../../walls/match-headings';
import type { Finding } from '../finding';
import type { FindingPlace } from './audit-finding';
import type { AuditedBook } from './audited-book';
import { causeOf, type CausedFinding } from './cause';
import { isError, isRows, type Value } from './outcome';
import { answerOf, type AuditedFunction, type Call } from './work-out';

const FACTOR = /^factor (\S+)$/;
// Values of the user's own are findings of the audit's own, each with its cell.
const LISTED_ONE_BY_ONE = 'override';

/** Walls with their factors and headings, asked about by one formula or many. */
export type Question = Call;

/** Runs CHECKS on its arguments, and gives its findings in the order of its lines. */
export type ChecksOf = (args: readonly unknown[]) => readonly Finding[];

/**
 * A text that stands for the walls, factors and headings of a call.
 * @param call the call
 * @returns the text; undefined where the call has no walls in a range
 */
export function questionKey(call: Call): string | undefined {
  const walls = call.get('walls');
  if (walls?.area === undefined) return undefined;
  return [walls, call.get('factors'), call.get('headings')].map((arg) => arg?.key ?? '').join('\n');
}

/**
 * What the checks say of the walls of a question.
 * @param book the workbook
 * @param question the walls with their factors and headings
 * @param checks the worksheet function that runs the checks
 * @param checksOf gives the walls that each of its lines is about
 * @returns one finding for each of its lines
 */
export function checkFindings(
  book: AuditedBook,
  question: Question,
  checks: AuditedFunction,
  checksOf: ChecksOf = () => [],
): CausedFinding[] {
  const area = question.get('walls')?.area;
  if (area === undefined) return [];
  const place = { sheet: area.sheet, address: areaAddress(area) };
  const args = checks.parameters.map(({ name }) => (name === 'zone' ? null : question.get(name)?.value));
  const outcome = answerOf(checks, args);
  if (!isRows(outcome)) {
    const areas = [...question.values()].flatMap((arg) => arg.area ?? []);
    const cause = isError(outcome) ? causeOf(book, outcome.problem, areas) : undefined;
    if (isError(outcome) && cause) {
      return [{ kind: 'error', ...place, what: outcome.message, todo: '', cause }];
    }
    return isError(outcome)
      ? [
          {
            kind: 'error',
            ...place,
            what: `The walls cannot be checked: ${outcome.message}`,
            todo: 'Correct what the message names.',
          },
        ]
      : [];
  }
  const findings = checksOf(args);
  const cells = findings.length > 0 ? cellsOf(question) : () => [];
  return outcome
    .slice(1)
    .map((line, index) => ({ line: line.map(text), finding: findings[index] }))
    .filter(({ line: [check] }) => check !== LISTED_ONE_BY_ONE)
    .map(({ line: [, what = '', where = '', why = '', todo = ''], finding }): CausedFinding => {
      const [first = place, ...others] = finding ? cells(finding) : [];
      return {
        kind: 'check',
        ...first,
        what: [where, what, why].map(sentence).join(' '),
        todo: sentence(todo),
        ...(others.length > 0 && { others }),
      };
    });
}

/**
 * The cells that a finding is about: of its column, or of the wall's label where the walls have no such column; of a
 * factor, its value.
 */
function cellsOf(question: Question): (finding: Finding) => FindingPlace[] {
  const [walls, factors, headings] = ['walls', 'factors', 'headings'].map((name) => question.get(name));
  const { system } = readFactors(factors?.value);
  const [header = []] = walls?.value as unknown[][];
  const columns = matchHeadings(header, system, headings?.value);
  const factorRows = factors?.area ? (factors.value as unknown[][]) : [];
  return ({ rows = [], column = 'wall', where }) => {
    const area = walls?.area;
    const across = columns.get(column) ?? columns.get('wall') ?? 0;
    if (area && rows.length > 0)
      return rows.map((row) => ({
        sheet: area.sheet,
        address: cellAddress(area.top + row - 1, area.left + across),
      }));
    const id = FACTOR.exec(where)?.[1];
    const down = id === undefined ? -1 : factorRows.findIndex(([name]) => factorIdOf(String(name)) === id);
    return factors?.area && down >= 0
      ? [
          {
            sheet: factors.area.sheet,
            address: cellAddress(factors.area.top + down, factors.area.left + 1),
          },
        ]
      : [];
  };
}

function sentence(words: string): string {
  return /[.!?]$/.test(words) ? words : `${words}.`;
}

function text(value: Value): string {
  return isError(value) ? value.message : String(value);
}
