/**
 * A time as a user reads it, in their own language and time zone.
 * @param time the time, or its ISO 8601 text
 * @returns date and time
 */
export function timeText(time: Date | string): string {
  return new Date(time).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
}

/**
 * A day as a user reads it, in their own language and time zone.
 * @param time the time
 * @returns the date
 */
export function dateText(time: Date): string {
  return time.toLocaleDateString(undefined, { dateStyle: 'medium' });
}

/**
 * The day of a time in the user's own time zone.
 * @param time the time, or its ISO 8601 text
 * @returns year-month-day, for example `2026-05-04`
 */
export function dayText(time: Date | string): string {
  const date = new Date(time);
  const digits = (number: number): string => String(number).padStart(2, '0');
  return `${String(date.getFullYear())}-${digits(date.getMonth() + 1)}-${digits(date.getDate())}`;
}
