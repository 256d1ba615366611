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
