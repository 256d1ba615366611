import { areaAddress } from '../../spreadsheet/address';
import type { AuditedBook } from './audited-book';
import { causeOf, type CausedFinding } from './cause';
import { isError, isRows, type Value } from './outcome';
import { answerOf, type AuditedFunction, type Call } from './work-out';

// Values of the user's own are findings of the audit's own, each with its cell.
const LISTED_ONE_BY_ONE = 'override';

/** Walls with their factors and headings, asked about by one formula or many. */
export type Question = Call;

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
 * @returns one finding for each of its lines
 */
export function checkFindings(
  book: AuditedBook,
  question: Question,
  checks: AuditedFunction,
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
  return outcome
    .slice(1)
    .map((line) => line.map(text))
    .filter(([check]) => check !== LISTED_ONE_BY_ONE)
    .map(([, what = '', where = '', why = '', todo = '']) => ({
      kind: 'check',
      ...place,
      what: [where, what, why].map(sentence).join(' '),
      todo: sentence(todo),
    }));
}

function sentence(words: string): string {
  return /[.!?]$/.test(words) ? words : `${words}.`;
}

function text(value: Value): string {
  return isError(value) ? value.message : String(value);
}
