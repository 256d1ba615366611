import { cellProblem, WashdownError, type Problem } from '../quantity/problem';
import { factorIdOf, readFactors, type FactorsInForce } from '../rules/read-factors';
import { Refusal } from '../walls/column-readers';
import { columns } from '../walls/columns';
import { cellEditor, refusedRow } from '../walls/edit-row';
import { readWalls } from '../walls/read-walls';
import type { WallRow } from '../walls/wall-row';
import { zonesOf } from '../walls/zones';
import type { Alternate, Edit } from './alternate';

/** The ranges that a bid is worked out from, as the host hands them over. */
export interface BidRanges {
  readonly walls: unknown;
  readonly factors: unknown;
  readonly headings?: unknown;
}

/** A bid as it is read. */
export interface Bid {
  readonly rows: readonly WallRow[];
  readonly factors: FactorsInForce;
}

type WallEdit = Extract<Edit, { of: 'wall' }>;
type FactorEdit = Extract<Edit, { of: 'factor' }>;

/**
 * The bid with the cells of an alternate set. A wall whose Area is set to 0 is left out.
 * @param base the bid as it is
 * @param ranges what it was read from
 * @param alternate the alternate
 * @returns rows and factors; the factors are those of the base where none is set, and a row that is not touched is the
 * same object then
 * @throws {WashdownError} naming each value that a cell refuses
 */
export function applied(base: Bid, ranges: BidRanges, alternate: Alternate): Bid {
  const ofFactors = alternate.edits.filter((edit): edit is FactorEdit => edit.of === 'factor');
  const ofWalls = alternate.edits.filter((edit): edit is WallEdit => edit.of === 'wall');
  const bid = ofFactors.length > 0 ? withFactors(ranges, ofFactors, alternate) : base;
  return ofWalls.length > 0 ? { ...bid, rows: withCells(bid, ofWalls, alternate) } : bid;
}

function withFactors(ranges: BidRanges, edits: readonly FactorEdit[], alternate: Alternate): Bid {
  const set = new Set(edits.map(({ id }) => id));
  const lines: readonly unknown[] = Array.isArray(ranges.factors) ? ranges.factors : [];
  const kept = lines.filter((line) => {
    const id: unknown = Array.isArray(line) ? line[0] : undefined;
    return typeof id !== 'string' || !set.has(factorIdOf(id) ?? '');
  });
  // The base could be read, so that whatever is refused is a value of the alternate, or goes against one.
  const factors = retold(
    () => readFactors([...kept, ...edits.map(({ id, value }) => [id, value])]),
    ({ row = 0, seen, accepted, message }) => {
      const edit = edits[row - 1 - kept.length];
      return edit && seen && accepted
        ? refused(edit, alternate, edit.id, seen, accepted)
        : { type: 'input', message: `${alternate.name}: ${message}` };
    },
  );
  const rows = retold(
    () => readWalls(ranges.walls, factors, ranges.headings),
    (problem) => ({ ...problem, message: `${alternate.name}: ${problem.message}` }),
  );
  return { rows, factors };
}

/** Does work, and tells what it refuses in other words. */
function retold<Result>(work: () => Result, tell: (problem: Problem) => Problem): Result {
  try {
    return work();
  } catch (error) {
    if (error instanceof WashdownError) throw new WashdownError(error.problems.map(tell));
    throw error;
  }
}

function withCells({ rows, factors }: Bid, edits: readonly WallEdit[], alternate: Alternate): WallRow[] {
  const edit = cellEditor(factors);
  // A zone is spelled as the walls spell it first.
  for (const row of rows) edit(row, 'zone', row.zone);
  const problems: Problem[] = [];
  const edited = new Map(rows.map((row) => [row.wall, row]));
  const take = (one: WallEdit, refusal: Refusal): void => {
    problems.push(refused(one, alternate, columns[one.column].name, refusal.seen, refusal.accepted));
  };
  for (const one of edits) {
    const row = edited.get(one.wall);
    if (row === undefined) continue;
    const after = edit(row, one.column, one.value);
    if (after instanceof Refusal) take(one, after);
    else edited.set(one.wall, after);
  }
  if (problems.length > 0) throw new WashdownError(problems);
  const left = new Set(
    edits
      .filter(({ wall, column }) => column === 'area' && edited.get(wall)?.area === 0)
      .map(({ wall }) => wall),
  );
  const all = [...edited.values()];
  const after = all.filter(({ wall }) => !left.has(wall));
  for (const one of edits) {
    const row = edited.get(one.wall);
    const refusal = row && !left.has(row.wall) && refusedRow(row, factors);
    if (refusal) take(one, refusal);
  }
  if (problems.length > 0) throw new WashdownError(problems);
  // A wall that is left out may take its zone along, whose rinse then runs over nobody; else rinse must lead somewhere.
  if (edits.some(({ column }) => column === 'zone' || column === 'receives')) zonesOf(all);
  return after;
}

function refused(
  { row }: Edit,
  { name }: Alternate,
  column: string,
  seen: string,
  accepted: string,
): Problem {
  const takes = `for ${column} ${accepted}`;
  if (row !== undefined) return cellProblem({ row, label: name, column: 'Value' }, seen, takes);
  return { type: 'input', message: `${name}: ${seen} cannot be used. Accepted: ${takes}.` };
}
