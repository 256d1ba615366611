import { badInput, type WashdownError } from '../quantity/problem';

const ISO_TIME = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:\d{2})$/;

/**
 * A kept value as an object.
 * @param raw the value
 * @param at where it stands, in words
 * @returns the object
 * @throws {WashdownError} where it is none
 */
export function objectOf(raw: unknown, at: string): Record<string, unknown> {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    throw unreadable(`${at} is not an object`);
  return raw as Record<string, unknown>;
}

/**
 * A kept value as a list.
 * @param raw the value
 * @param at where it stands, in words
 * @returns the list
 * @throws {WashdownError} where it is none
 */
export function listOf(raw: unknown, at: string): unknown[] {
  if (!Array.isArray(raw)) throw unreadable(`${at} is not a list`);
  return raw as unknown[];
}

/**
 * A kept value as a list of texts.
 * @param raw the value
 * @param at where it stands, in words
 * @returns the texts
 * @throws {WashdownError} where it is not a list, or holds something else
 */
export function textsOf(raw: unknown, at: string): string[] {
  return listOf(raw, at).map((item, index) => textOf(item, `${at} ${String(index + 1)}`));
}

/**
 * A kept value as a text.
 * @param raw the value
 * @param at where it stands, in words
 * @returns the text
 * @throws {WashdownError} where it is none
 */
export function textOf(raw: unknown, at: string): string {
  if (typeof raw !== 'string') throw unreadable(`${at} is not text`);
  return raw;
}

/**
 * A kept value as true or false.
 * @param raw the value
 * @param at where it stands, in words
 * @returns the value
 * @throws {WashdownError} where it is neither
 */
export function yesOrNoOf(raw: unknown, at: string): boolean {
  if (typeof raw !== 'boolean') throw unreadable(`${at} is neither true nor false`);
  return raw;
}

/**
 * A kept value as date and time.
 * @param raw the value
 * @param at where it stands, in words
 * @returns its ISO 8601 text
 * @throws {WashdownError} where it is none
 */
export function timeOf(raw: unknown, at: string): string {
  const text = textOf(raw, at);
  if (!ISO_TIME.test(text)) throw unreadable(`${at} is not a date and time: "${text}"`);
  return text;
}

/**
 * What is said of a kept text that cannot be read.
 * @param why which part, and what is wrong with it
 * @returns the error
 */
export function unreadable(why: string): WashdownError {
  return badInput(`The progress saved in this workbook cannot be read: ${why}.`);
}
