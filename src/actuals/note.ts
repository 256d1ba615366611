import { dayWords } from '../quantity/day-words';

/**
 * What to note beside a factor whose value comes from recorded work.
 * @param entries the entries, with their days as the spreadsheet counts them
 * @param jobs how many jobs they are of; left out for one
 * @returns for example `from 9 entries to May 3, 2026`
 */
export function noteOf(entries: readonly { readonly date: number | undefined }[], jobs?: number): string {
  const last = entries.reduce((latest, { date = 0 }) => Math.max(latest, date), 0);
  const counted = `from ${String(entries.length)} ${entries.length === 1 ? 'entry' : 'entries'}`;
  const of = jobs === undefined ? '' : ` of ${String(jobs)} ${jobs === 1 ? 'job' : 'jobs'}`;
  const to = last === 0 ? '' : ` to ${dayWords(last)}`;
  return counted + of + to;
}
