import { compile, parse, type EvalFunction, type MathNode } from 'mathjs/number';
import { expect } from 'vitest';
import type { JobEstimate } from '../../src/estimate/schedule';
import { answer, readQuestion, type Question } from '../../functions/arguments';
import { methods } from '../../src/rules/methods';
import { Recorder, type TraceLine } from '../../src/trace/recorder';
import { expectSame } from '../properties/call';
import type { Job } from './jobs';

export const RELATIVE = 1e-9;

const KINDS = [
  'published',
  'common practice',
  'from memory',
  'assumption',
  'yours to state',
  'override',
  'input',
  'computed',
];

interface Compiled {
  readonly symbols: readonly string[];
  readonly evaluation: EvalFunction;
}
const compiled = new Map<string, Compiled>();

/** Parses an expression once; its symbols are what stands in it beside the names of functions. */
export function compiledOf(expression: string): Compiled {
  const known = compiled.get(expression);
  if (known) return known;
  const symbols = new Set<string>();
  parse(expression).traverse((node: MathNode, path: string, parent: MathNode | null) => {
    const isCalled = parent?.type === 'FunctionNode' && path === 'fn';
    if (node.type === 'SymbolNode' && !isCalled) symbols.add((node as MathNode & { name: string }).name);
  });
  const made = { symbols: [...symbols], evaluation: compile(expression) };
  compiled.set(expression, made);
  return made;
}

/** Works something out when it is first asked for, within the test that asks. */
export function once<T>(work: () => T): () => T {
  let known: { readonly value: T } | undefined;
  return () => (known ??= { value: work() }).value;
}

function mustHold(condition: boolean, what: string): void {
  // An assertion of the test runner for each of a million lines would take minutes.
  if (!condition) expect.fail(what);
}

const worked = new Set(
  Object.entries(methods)
    // A conversion is a factor; another zone has a trace of its own.
    .filter(([id]) => id !== 'convert' && id !== 'otherZone')
    .map(([, { rule }]) => rule as string),
);

/** Replays lines in their order, each from the numbers above it, and expects each to come out. */
export function replay(lines: readonly TraceLine[]): void {
  const scope = new Map<string, number>();
  mustHold(lines.length > 0, 'there are lines');
  for (const { symbol, expression, value, unit, rule, source, kind } of lines) {
    const what = `${symbol} = ${expression}`;
    mustHold(!scope.has(symbol), `${symbol} is defined twice`);
    if (expression !== '') {
      const { symbols, evaluation } = compiledOf(expression);
      for (const used of symbols) mustHold(scope.has(used), `${what}: ${used} is not defined above`);
      expectSame(value, evaluation.evaluate(scope) as number, RELATIVE, what);
    } else mustHold(!worked.has(rule), `${symbol} follows a rule without saying how it was worked out`);
    mustHold(Number.isFinite(value), `${what} is no finite number`);
    mustHold(rule !== '' && source !== '' && unit !== '', `${what} lacks a rule, a source or a unit`);
    mustHold(KINDS.includes(kind), `${what} has the kind ${kind}`);
    scope.set(symbol, value);
  }
}

/** A record that refuses to give a symbol a second value. */
class OneValueEach extends Map<string, TraceLine> {
  override set(symbol: string, line: TraceLine): this {
    const before = this.get(symbol);
    if (before && !Number.isNaN(before.value)) {
      expectSame(line.value, before.value, 1e-15, `second value of ${symbol}`);
      mustHold(line.unit === before.unit, `${symbol} in ${line.unit} and in ${before.unit}`);
    }
    return super.set(symbol, line);
  }
}

/** A calculation with everything that it took down. */
export interface Recorded {
  readonly question: Question;
  readonly estimate: JobEstimate;
  readonly rec: Recorder;
  /** Every line, in the order in which they were worked out. */
  readonly lines: readonly TraceLine[];
}

/** Works a job out and takes everything down; refuses a symbol with two values. */
export function record({ walls, factors }: Job, zone = ''): Recorded {
  const question = readQuestion(walls, zone, factors, null);
  const rec = new Recorder(question.factors);
  const kept = new OneValueEach();
  Object.assign(rec, { lines: kept });
  const estimate = answer(question, { rec });
  expect(kept.size).toBeGreaterThan(0);
  return { question, estimate, rec, lines: [...kept.values()] };
}
