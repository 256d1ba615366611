/** A clock and a way to let others work, both of the host. */
export interface Turns {
  /** Milliseconds since some start. */
  readonly now: () => number;
  /** Lets the host draw and answer the user. */
  readonly pause: () => Promise<void>;
}

// The pane is to answer within 50 ms, and the last step of a slice may run over its end.
const SLICE_MS = 16;

/**
 * Does a long work in slices, so that the pane answers in between.
 * @param work the work, step by step
 * @param turns the clock, and what lets others work
 * @param signal ends the work early
 * @param progress told of the last step of each slice
 * @returns the result; undefined where the work was stopped
 */
export async function inSlices<Step, Result>(
  work: Generator<Step, Result>,
  turns: Turns,
  signal: AbortSignal,
  progress: (step: Step) => void,
): Promise<Result | undefined> {
  for (;;) {
    const end = turns.now() + SLICE_MS;
    let step = work.next();
    while (!step.done && turns.now() < end) step = work.next();
    if (step.done) return step.value;
    progress(step.value);
    await turns.pause();
    if (signal.aborted) return undefined;
  }
}

/** The clock and the turns of the browser. */
export const browserTurns: Turns = {
  now: () => performance.now(),
  pause: () => new Promise((resolve) => setTimeout(resolve)),
};
