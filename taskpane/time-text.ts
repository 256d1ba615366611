/**
 * A time as a user reads it, in their own language and time zone.
 * @param time the time, or its ISO 8601 text
 * @returns date and time
 */
export function timeText(time: Date | string): string {
  return new Date(time).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
}
