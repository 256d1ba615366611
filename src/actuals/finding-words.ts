import { DIGITS, shownAmount } from '../quantity/shown-number';
import type { System } from '../quantity/systems';
import type { ProgressFinding } from './progress';
import type { NoRate } from './rates';

/**
 * What a reader must know of a line of progress, in words.
 * @param finding the finding
 * @param system the display system
 * @returns a sentence or two
 */
export function findingInWords(finding: ProgressFinding, system: System): string {
  switch (finding.type) {
    case 'nothing earned':
      return 'Hours are recorded and nothing is earned yet: no forecast.';
    case 'not in the estimate':
      return 'The estimate has no hours for this: no forecast.';
    case 'wash and parts':
      return 'Recorded as wash and by its parts too: more than the area there is. It counts as done once.';
    case 'beyond': {
      const [done, area] = [areaInWords(finding.done, system), areaInWords(finding.area, system)];
      return `${finding.where}: ${done} recorded of ${area}. It counts as done once; check whether an area is recorded twice.`;
    }
  }
}

function areaInWords(area: number, system: System): string {
  return shownAmount(area, 'area', system, DIGITS.typed);
}

/** Something recorded, with its row. */
interface Recorded {
  readonly row: number;
}

/**
 * Why entries show no rate, in words.
 * @param why the reason
 * @param task name of their task
 * @param entries the entries
 * @returns a sentence
 */
export function noRateInWords(why: NoRate, task: string, entries: readonly Recorded[]): string {
  switch (why) {
    case 'no single rate':
      return task === 'wash'
        ? 'The wash as a whole shows no single rate: record prewet, apply, scrub, rinse and below separately.'
        : `No single rate sets the hours of ${task}.`;
    case 'no area':
      return `No rate without an area: ${rowsInWords(entries)}.`;
    case 'no hours':
      return `No rate without hours: ${rowsInWords(entries)}.`;
    case 'not in the estimate':
      return `The estimate has no hours for this there: ${rowsInWords(entries)}.`;
  }
}

/**
 * Entries by their rows.
 * @param entries the entries
 * @returns for example `rows 2, 5`
 */
export function rowsInWords(entries: readonly Recorded[]): string {
  return `${entries.length === 1 ? 'row' : 'rows'} ${entries.map(({ row }) => String(row)).join(', ')}`;
}

/**
 * Whether the note of a factor says that its value comes from recorded work.
 * @param note the note
 * @returns true where it does
 */
export function isFromEntries(note: string): boolean {
  return /^from \d+ entr/.test(note);
}
