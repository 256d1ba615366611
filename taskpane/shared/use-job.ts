import { useCallback } from 'preact/hooks';
import { answer, readQuestion } from '../../functions/arguments';
import type { ZoneEstimate } from '../../src/estimate/schedule';
import type { FactorsInForce } from '../../src/rules/read-factors';
import type { Zone } from '../../src/walls/zones';
import { useReading } from './use-reading';
import { readSource, type WallSource } from './wall-source';
import type { CellContent, WorkbookPort } from '../workbook/port';

/** The estimate of the workbook as it stands. */
export interface Job {
  readonly zones: readonly ZoneEstimate[];
  readonly factors: FactorsInForce;
  /** The zones with their walls, as they were read. */
  readonly walls: readonly Zone[];
  /** The map of headings, which the recorded work shares; null where there is none. */
  readonly headings: CellContent[][] | null;
}

/** The job, or why there is none. */
export type JobState =
  | { readonly is: 'reading' }
  | { readonly is: 'ready'; readonly job: Job }
  | { readonly is: 'failed'; readonly message: string };

/**
 * The estimate of the workbook, worked out again after cells have changed. A job that can no longer be worked out is
 * not shown any longer: its numbers would be those of other walls.
 * @param port the workbook
 * @param source where walls, factors and headings stand
 * @returns the job, or why there is none
 */
export function useJob(port: WorkbookPort, source: WallSource): JobState {
  const read = useCallback(() => readJob(port, source), [port, source]);
  const reading = useReading(port, read);
  return reading.is === 'ready' ? { is: 'ready', job: reading.value } : reading;
}

async function readJob(port: WorkbookPort, source: WallSource): Promise<Job> {
  const { walls, factors, headings } = await readSource(port, source);
  const question = readQuestion(walls, '', factors, headings);
  return { zones: answer(question).zones, factors: question.factors, walls: question.job, headings };
}
