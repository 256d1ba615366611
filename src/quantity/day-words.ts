// The spreadsheet's number of 1 January 1970.
const EPOCH = 25569;
const MS_PER_DAY = 86_400_000;

const inWords = new Intl.DateTimeFormat('en-US', {
  day: 'numeric',
  month: 'long',
  year: 'numeric',
  timeZone: 'UTC',
});

/**
 * A day in words.
 * @param day as the spreadsheet counts
 * @returns for example `May 3, 2026`
 */
export function dayWords(day: number): string {
  return inWords.format((day - EPOCH) * MS_PER_DAY);
}
