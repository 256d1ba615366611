import { useCallback } from 'preact/hooks';
import type { Job } from '../shared/use-job';
import { useReading, type Reading } from '../shared/use-reading';
import type { WorkbookPort } from '../workbook/port';
import { readRecorded, type Recorded } from './recorded';

/**
 * The recorded work of the workbook, read again after cells have changed.
 * @param port the workbook
 * @param job the job that it belongs to
 * @returns the entries, or why they cannot be read
 */
export function useRecorded(port: WorkbookPort, job: Job): Reading<Recorded> {
  return useReading(
    port,
    useCallback(() => readRecorded(port, job), [port, job]),
  );
}
