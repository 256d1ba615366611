import { messageOf } from '../workbook/message-of';

/**
 * What is said where something could not be written.
 * @param error what the workbook rejected with
 * @returns what is in the workbook now, and why
 */
export function failureText(error: unknown): string {
  const reason = messageOf(error, '');
  const { left = [] } = (error ?? {}) as { readonly left?: readonly string[] };
  return left.length > 0
    ? `Written in part: ${reason} This could not be taken back: ${left.join('; ')}. Look there first.`
    : `Nothing was written. ${reason} Is the workbook or the sheet protected?`;
}
