import { useEffect, useState } from 'preact/hooks';
import type { WorkbookPort } from '../workbook/port';
import { messageOf } from '../workbook/message-of';

/** What was read from the workbook, or why it could not be. */
export type Reading<Value> =
  | { readonly is: 'reading' }
  | { readonly is: 'ready'; readonly value: Value }
  | { readonly is: 'failed'; readonly message: string };

// A filled-down column reports each of its cells.
const QUIET_MS = 300;

/**
 * What a reading of the workbook gives, read again after cells have changed. What can no longer be read is not shown
 * any longer: it would be that of other cells.
 * @param port the workbook
 * @param read reads it, until its signal says that the reading is no longer wanted; another function is another reading
 * @returns the value, or why there is none
 */
export function useReading<Value>(
  port: WorkbookPort,
  read: (unwanted: AbortSignal) => Promise<Value>,
): Reading<Value> {
  const [state, setState] = useState<Reading<Value>>({ is: 'reading' });
  useEffect(() => {
    let waiting: ReturnType<typeof setTimeout> | undefined;
    let latest = new AbortController();
    const readNow = () => {
      latest.abort();
      latest = new AbortController();
      const { signal } = latest;
      read(signal)
        .then(
          (value): Reading<Value> => ({ is: 'ready', value }),
          (error: unknown): Reading<Value> => ({
            is: 'failed',
            message: messageOf(error, 'The walls could not be read.'),
          }),
        )
        .then((next) => {
          if (!signal.aborted) setState(next);
        })
        .catch(() => undefined);
    };
    readNow();
    const end = port.onChanged(() => {
      clearTimeout(waiting);
      waiting = setTimeout(readNow, QUIET_MS);
    });
    return () => {
      latest.abort();
      clearTimeout(waiting);
      end();
    };
  }, [port, read]);
  return state;
}
