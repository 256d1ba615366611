import { useEffect, useState } from 'preact/hooks';
import { answer, readQuestion } from '../functions/arguments';
import type { ZoneEstimate } from '../src/estimate/schedule';
import { WashdownError } from '../src/quantity/problem';
import type { FactorsInForce } from '../src/rules/read-factors';
import { readSource, type WallSource } from './wall-source';
import type { WorkbookPort } from './workbook/port';

/** The estimate of the workbook as it stands. */
export interface Job {
  readonly zones: readonly ZoneEstimate[];
  readonly factors: FactorsInForce;
}

/** The job, or why there is none. */
export type JobState =
  | { readonly is: 'reading' }
  | { readonly is: 'ready'; readonly job: Job }
  | { readonly is: 'failed'; readonly message: string };

// A filled-down column reports each of its cells.
const QUIET_MS = 300;

/**
 * The estimate of the workbook, worked out again after cells have changed. A job that can no longer be worked out is
 * not shown any longer: its numbers would be those of other walls.
 * @param port the workbook
 * @param source where walls, factors and headings stand
 * @returns the job, or why there is none
 */
export function useJob(port: WorkbookPort, source: WallSource): JobState {
  const [state, setState] = useState<JobState>({ is: 'reading' });
  useEffect(() => {
    let stopped = false;
    let waiting: ReturnType<typeof setTimeout> | undefined;
    let latest = 0;
    const read = () => {
      const reading = ++latest;
      readJob(port, source)
        .then(
          (job): JobState => ({ is: 'ready', job }),
          (error: unknown): JobState => ({ is: 'failed', message: messageOf(error) }),
        )
        .then((next) => {
          if (!stopped && reading === latest) setState(next);
        })
        .catch(() => undefined);
    };
    read();
    const end = port.onChanged(() => {
      clearTimeout(waiting);
      waiting = setTimeout(read, QUIET_MS);
    });
    return () => {
      stopped = true;
      clearTimeout(waiting);
      end();
    };
  }, [port, source]);
  return state;
}

async function readJob(port: WorkbookPort, source: WallSource): Promise<Job> {
  const { walls, factors, headings } = await readSource(port, source);
  const question = readQuestion(walls, '', factors, headings);
  return { zones: answer(question).zones, factors: question.factors };
}

function messageOf(error: unknown): string {
  if (error instanceof WashdownError) return error.message;
  return error instanceof Error ? error.message : 'The walls could not be read.';
}
