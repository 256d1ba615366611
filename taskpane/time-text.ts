/**
 * A time as a user reads it, in their own language and time zone.
 * @param time the time, or its ISO 8601 text
 * @returns date and time
 */
export function timeText(time: Date | string): string {
  return new Date(time).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
}

/**
 * A day in its ISO form, in the user's own time zone.
 * @param time any time of the day
 * @returns for example `2026-11-25`
 */
export function dayText(time: Date): string {
  const twoDigits = (part: number) => String(part).padStart(2, '0');
  return `${String(time.getFullYear())}-${twoDigits(time.getMonth() + 1)}-${twoDigits(time.getDate())}`;
}
