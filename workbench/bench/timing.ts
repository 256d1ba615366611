/**
 * The middle one of some values, which a busy machine moves less than their mean.
 * @param values one value at least
 * @returns the median
 */
export function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}

/** Work that is timed; it is told how often it has been done, so that it can do something new each time. */
export type Timed = (turn: number) => unknown;

/**
 * Times several things in turn, so that a machine that is busy for a while is so for all of them; every other turn in
 * reverse, so that none has always the other's litter to clear.
 * @param works what is timed
 * @param turns how often each is done, after as many turns again that do not count
 * @returns milliseconds of each, the median
 */
export function inTurn<Name extends string>(
  works: Readonly<Record<Name, Timed>>,
  turns: number,
): Record<Name, number> {
  const names = Object.keys(works) as Name[];
  const times = Object.fromEntries(names.map((name) => [name, []])) as unknown as Record<Name, number[]>;
  for (let turn = 0; turn < 2 * turns; turn++) {
    for (const name of turn % 2 === 0 ? names : names.toReversed()) {
      const start = performance.now();
      works[name](turn);
      const time = performance.now() - start;
      if (turn >= turns) times[name].push(time);
    }
  }
  return Object.fromEntries(names.map((name) => [name, median(times[name])])) as Record<Name, number>;
}
