/**
 * The errors that a cell can show, by the platform's documentation of the errors of cells; the first eight are those
 * that a workbook file stores (ECMA-376, part 1, 18.18.11 and 22.9.2).
 */
const ERROR_CODES = [
  '#NULL!',
  '#DIV/0!',
  '#VALUE!',
  '#REF!',
  '#NAME?',
  '#NUM!',
  '#N/A',
  '#GETTING_DATA',
  '#SPILL!',
  '#CALC!',
  '#FIELD!',
  '#BLOCKED!',
  '#CONNECT!',
  '#BUSY!',
  '#UNKNOWN!',
  '#EXTERNAL!',
  '#TIMEOUT!',
  '#PYTHON!',
] as const;

/** An error that a cell can show. */
export type ErrorCode = (typeof ERROR_CODES)[number];

const codes = new Map<string, ErrorCode>(ERROR_CODES.map((code) => [code, code]));

/** Finds an error where a formula names one; for the pattern of a token. */
export const ERROR_PATTERN = ERROR_CODES.map((code) => code.replace(/[?/]/g, '\\$&')).join('|');

/**
 * The error that a text stands for. A text that only begins like one, such as `#EAST`, is a text.
 * @param text what a cell shows or holds; capital letters do not count, as where an error is typed
 * @returns the error, or undefined where the text is none
 */
export function errorCode(text: string): ErrorCode | undefined {
  // Most texts are none, and a long table has many.
  return text.startsWith('#') ? codes.get(text.toUpperCase()) : undefined;
}
