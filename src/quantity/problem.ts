/** What could not be used, where it stands, and what would be accepted. */
export interface Problem {
  /** `input`: something that cannot be read. `nothing`: the question has no answer here. */
  readonly type: 'input' | 'nothing';
  /** Row within the range, its header being row 1. */
  readonly row?: number;
  /** Heading of the column, or the factor id. */
  readonly column?: string;
  /** The value seen, as a reader would recognise it. */
  readonly seen?: string;
  /** What is accepted instead. */
  readonly accepted?: string;
  /** The whole in one sentence or two. */
  readonly message: string;
}

/** Raised where a result would otherwise be guessed; carries every problem found, the first in its message. */
export class WashdownError extends Error {
  /** All problems found, in the order of the rows. */
  readonly problems: readonly Problem[];

  /**
   * Builds the error from what was found.
   * @param problems one problem or more
   */
  constructor(problems: readonly Problem[]) {
    const [first] = problems;
    super((first?.message ?? 'Something cannot be used.') + moreText(problems.length - 1));
    this.name = 'WashdownError';
    this.problems = problems;
  }
}

function moreText(more: number): string {
  if (more < 1) return '';
  return more === 1 ? ' One more problem was found.' : ` ${String(more)} more problems were found.`;
}

/**
 * A problem with one cell.
 * @param where what the cell belongs to: row number in the range, the row's label, the column
 * @param where.row row within the range, header row 1
 * @param where.label label of the row, where it has one
 * @param where.column heading of the column or factor id
 * @param seen the value seen, described
 * @param accepted what is accepted
 * @returns the problem with its sentence
 */
export function cellProblem(
  where: { row: number; label?: string; column: string },
  seen: string,
  accepted: string,
): Problem {
  const label = where.label ? ` (${where.label})` : '';
  return {
    type: 'input',
    row: where.row,
    column: where.column,
    seen,
    accepted,
    message: `Row ${String(where.row)}${label}, column ${where.column}: ${seen} cannot be used. Accepted: ${ended(accepted)}`,
  };
}

/**
 * A problem with the first row of a range: a heading that is not there.
 * @param heading the heading
 * @param accepted what is accepted
 * @returns the problem with its sentence
 */
export function missingHeading(heading: string, accepted: string): Problem {
  return {
    type: 'input',
    row: 1,
    column: heading,
    seen: 'a missing heading',
    accepted,
    message: `Row 1: no column is headed "${heading}". Accepted: ${ended(accepted)}`,
  };
}

/**
 * What is accepted with the end of its sentence: a question that stands last has its own.
 * @param accepted what is accepted
 * @returns it with a full stop or question mark
 */
export function ended(accepted: string): string {
  return accepted.endsWith('?') ? accepted : `${accepted}.`;
}

/**
 * A problem with the input as a whole.
 * @param message what is wrong and what is accepted
 * @returns the problem
 */
export function inputProblem(message: string): Problem {
  return { type: 'input', message };
}

/**
 * An error that says that a question has no answer here.
 * @param message why there is nothing to answer
 * @returns the error to throw
 */
export function nothingHere(message: string): WashdownError {
  return new WashdownError([{ type: 'nothing', message }]);
}

/**
 * An error about the input as a whole.
 * @param message what is wrong and what is accepted
 * @returns the error to throw
 */
export function badInput(message: string): WashdownError {
  return new WashdownError([inputProblem(message)]);
}
