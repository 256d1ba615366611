import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { WashdownError } from '../../src/quantity/problem';
import { progressText, readProgress } from '../../src/site/progress-text';
import { NO_PROGRESS, type Progress } from '../../src/site/step-progress';
import { keep, keepOnSheet, readKept } from '../shared/kept-text';
import type { WorkbookPort } from '../workbook/port';

/** The progress that the workbook keeps. */
export type ProgressState =
  | { readonly is: 'reading' }
  | {
      readonly is: 'ready';
      readonly progress: Progress;
      /** False while nothing keeps it: it is lost with the pane. */
      readonly kept: boolean;
    }
  /** What is kept cannot be read, and is left as it is. */
  | { readonly is: 'unreadable'; readonly message: string; readonly text: string };

/** The progress and what can be done with it. */
export interface KeptProgress {
  readonly state: ProgressState;
  /** Changes what is kept; says whether it was kept. */
  readonly change: (change: (progress: Progress) => Progress) => Promise<boolean>;
  /** Keeps the progress on a sheet, where the workbook does not keep it itself. */
  readonly keepOnSheet: () => Promise<void>;
  /** Starts with no progress, after the user has put an unreadable text elsewhere. */
  readonly startAnew: () => Promise<boolean>;
}

/**
 * The progress kept in the workbook. Every change starts from what the workbook holds at that time, since another
 * person may have the same workbook open.
 * @param port the workbook
 * @returns the progress and what can be done with it
 */
export function useProgress(port: WorkbookPort): KeptProgress {
  const [state, setState] = useState<ProgressState>({ is: 'reading' });
  const latest = useRef(state);
  const queue = useRef<Promise<unknown>>(Promise.resolve());
  const show = useCallback((next: ProgressState) => {
    latest.current = next;
    setState(next);
  }, []);

  useEffect(() => {
    let stopped = false;
    read(port).then(
      (next) => {
        if (!stopped) show(next);
      },
      () => {
        if (!stopped) show({ is: 'ready', progress: NO_PROGRESS, kept: false });
      },
    );
    return () => {
      stopped = true;
    };
  }, [port, show]);

  const inTurn = useCallback(<T>(task: () => Promise<T>): Promise<T> => {
    const turn = queue.current.then(task);
    queue.current = turn.catch(() => undefined);
    return turn;
  }, []);

  useEffect(() => {
    const readAgain = () => {
      void inTurn(async () => {
        if (latest.current.is === 'ready' && latest.current.kept) show(await read(port));
      }).catch(() => undefined);
    };
    // Another person may have ticked meanwhile.
    window.addEventListener('focus', readAgain);
    return () => {
      window.removeEventListener('focus', readAgain);
    };
  }, [port, show, inTurn]);

  const store = useCallback(
    async (progress: Progress): Promise<boolean> => {
      const kept = await keep(port, 'steps', progressText(progress)).catch(() => false);
      show({ is: 'ready', progress, kept });
      return kept;
    },
    [port, show],
  );

  const change = useCallback(
    (to: (progress: Progress) => Progress) =>
      inTurn(async () => {
        const unkept = latest.current.is === 'ready' && !latest.current.kept;
        const now = unkept ? latest.current : await read(port);
        if (now.is === 'ready') return store(to(now.progress));
        show(now);
        return false;
      }),
    [port, show, store, inTurn],
  );

  return {
    state,
    change,
    keepOnSheet: () =>
      inTurn(async () => {
        const now = latest.current;
        if (now.is !== 'ready') return;
        await keepOnSheet(port, 'steps', progressText(now.progress));
        show({ ...now, kept: true });
      }),
    startAnew: () => inTurn(() => store(NO_PROGRESS)),
  };
}

async function read(port: WorkbookPort): Promise<ProgressState> {
  const text = await readKept(port, 'steps');
  if (text === undefined || text === '') return { is: 'ready', progress: NO_PROGRESS, kept: true };
  try {
    return { is: 'ready', progress: readProgress(text), kept: true };
  } catch (error) {
    if (!(error instanceof WashdownError)) throw error;
    return { is: 'unreadable', message: error.message, text };
  }
}
