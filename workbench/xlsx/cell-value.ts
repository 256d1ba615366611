/** A cell error, with the sentence that explains it where one is known. */
export interface CellError {
  readonly error: string;
  readonly message?: string;
}

/** What a cell holds; null is a cell that is not there. */
export type CellValue = number | string | boolean | null | CellError;

/**
 * Whether a value is an error.
 * @param value what a cell holds
 * @returns true for an error
 */
export function isCellError(value: CellValue): value is CellError {
  return typeof value === 'object' && value !== null;
}

const ERROR_CODES = new Set([
  '#DIV/0!',
  '#N/A',
  '#NAME?',
  '#NULL!',
  '#NUM!',
  '#REF!',
  '#VALUE!',
  '#SPILL!',
  '#CALC!',
  '#GETTING_DATA',
]);

/**
 * Whether a text is the name of a cell error.
 * @param text for example `#N/A`
 * @returns true where a spreadsheet shows this as an error
 */
export function isErrorCode(text: string): boolean {
  return ERROR_CODES.has(text);
}
