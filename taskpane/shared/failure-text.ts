import { messageOf } from '../workbook/message-of';

/**
 * What is said where something could not be written.
 * @param error what the workbook rejected with
 * @param undone what did not come about, a sentence; left out where a writing by itself was asked for
 * @returns what is in the workbook now, and why
 */
export function failureText(error: unknown, undone = ''): string {
  const reason = messageOf(error, '');
  const { left = [] } = (error ?? {}) as { readonly left?: readonly string[] };
  const before = undone === '' ? '' : `${undone} `;
  return left.length > 0
    ? `${before}Written in part: ${reason} This could not be taken back: ${left.join('; ')}. Look there first.`
    : `${before}Nothing was written. ${reason} Is the workbook or the sheet protected?`;
}
