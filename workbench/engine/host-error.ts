/** The errors that a worksheet function may raise, by the host's name for them. */
export const HOST_ERROR_CODES = {
  invalidValue: '#VALUE!',
  notAvailable: '#N/A',
  divisionByZero: '#DIV/0!',
  invalidNumber: '#NUM!',
  nullReference: '#NULL!',
} as const;

/** The error class that the host gives to worksheet functions. */
export class HostError extends Error {
  override readonly name = 'CustomFunctions.Error';
  readonly code: string;

  /**
   * Builds the error as a function does.
   * @param code the cell error
   * @param message what is wrong and what is accepted
   */
  constructor(code: string, message?: string) {
    super(message ?? '');
    this.code = code;
  }
}
