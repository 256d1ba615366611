import type { CellValue } from '../../functions/worksheet-function';
import { expect } from 'vitest';
import { expectSame, lines, text, type Line } from './call';

export const RELATIVE = 1e-9;

/** The lines of SCHEDULE by the name of their zone. */
export function scheduleOf(walls: unknown[][], factors: unknown = null): Map<string, Line> {
  return byName(lines('SCHEDULE', walls, null, factors), 'Zone');
}

/** The lines of WALLROWS by the label of their wall. */
export function wallRowsOf(walls: unknown[][], factors: unknown = null): Map<string, Line> {
  return byName(lines('WALLROWS', walls, null, factors), 'Wall');
}

function byName(all: readonly Line[], heading: string): Map<string, Line> {
  return new Map(all.map((line) => [text(line[heading]), line]));
}

// Its materials stand in the order of the rows.
const IN_ANY_ORDER = 'Set by';

function expectCell(ours: CellValue | undefined, theirs: CellValue | undefined, what: string): void {
  if (typeof ours === 'number' && typeof theirs === 'number') {
    expectSame(ours, theirs, RELATIVE, what);
  } else if (what.endsWith(IN_ANY_ORDER) && typeof ours === 'string' && typeof theirs === 'string') {
    expect(ours.split(', ').sort(), what).toEqual(theirs.split(', ').sort());
  } else {
    expect(ours, what).toEqual(theirs);
  }
}

/** Expects two tables to hold the same lines, in any order, with the same cells. */
export function expectSameLines(ours: ReadonlyMap<string, Line>, theirs: ReadonlyMap<string, Line>): void {
  expect([...ours.keys()].sort()).toEqual([...theirs.keys()].sort());
  for (const [name, line] of ours) {
    const other = theirs.get(name) ?? {};
    for (const heading of Object.keys(line)) expectCell(line[heading], other[heading], `${name}: ${heading}`);
  }
}
