import { cellsIn, type Area } from '../xlsx/address';
import type { Read } from './formula-reads';

/** A formula of a workbook, among others. */
export interface Node {
  readonly key: string;
  /** Name of its sheet in small letters. */
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** What its result fills. */
  readonly area: Area;
  readonly reads: readonly Read[];
}

// A read of a few cells is found by each of them, a larger one by looking through all larger ones.
const FEW_CELLS = 8;

interface Column {
  /** Rows of the formulas, in order, and the formulas in the same order. */
  readonly rows: number[];
  readonly nodes: number[];
  /** For each place the first one from there on that was not visited yet. */
  readonly next: number[];
}

function meets(a: Area, b: Area): boolean {
  return a.top <= b.bottom && a.bottom >= b.top && a.left <= b.right && a.right >= b.left;
}

function firstFrom(rows: readonly number[], row: number): number {
  let [low, high] = [0, rows.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rows[middle] ?? 0) < row) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Which formulas read which others. */
export class FormulaGraph {
  readonly #nodes: readonly Node[];
  readonly #columns = new Map<string, Map<number, Column>>();
  readonly #spilling = new Map<string, number[]>();

  /**
   * Looks through formulas.
   * @param nodes the formulas
   */
  constructor(nodes: readonly Node[]) {
    this.#nodes = nodes;
    const order = [...nodes.keys()].sort((a, b) => (nodes[a]?.row ?? 0) - (nodes[b]?.row ?? 0));
    for (const index of order) {
      const node = nodes[index];
      if (!node) continue;
      const columns = this.#columns.get(node.sheet) ?? new Map<number, Column>();
      this.#columns.set(node.sheet, columns);
      const column = columns.get(node.column) ?? { rows: [], nodes: [], next: [] };
      columns.set(node.column, column);
      column.next.push(column.rows.length);
      column.rows.push(node.row);
      column.nodes.push(index);
      if (cellsIn(node.area) === 1) continue;
      this.#spilling.set(node.sheet, [...(this.#spilling.get(node.sheet) ?? []), index]);
    }
  }

  /**
   * The formulas that some formulas read, over any number of steps, and themselves.
   * @param starts their places among the nodes
   * @returns places among the nodes
   */
  precedents(starts: Iterable<number>): Set<number> {
    for (const columns of this.#columns.values()) {
      for (const { next } of columns.values()) for (const place of next.keys()) next[place] = place;
    }
    const reached = new Set(starts);
    const ahead = [...reached];
    for (let index = ahead.pop(); index !== undefined; index = ahead.pop()) {
      for (const read of this.#nodes[index]?.reads ?? []) {
        for (const found of this.#read(read, true)) {
          if (reached.has(found)) continue;
          reached.add(found);
          ahead.push(found);
        }
      }
    }
    return reached;
  }

  /**
   * The formulas that read some formulas, over any number of steps, and those themselves.
   * @param starts their places among the nodes
   * @returns places among the nodes
   */
  dependents(starts: Iterable<number>): Set<number> {
    const few = new Map<string, number[]>();
    let many: { index: number; read: Read }[] = [];
    for (const [index, { reads }] of this.#nodes.entries()) {
      for (const read of reads) {
        if (cellsIn(read.area) > FEW_CELLS) many.push({ index, read });
        else {
          for (const cell of cellsOf(read)) {
            const readers = few.get(cell);
            if (readers) readers.push(index);
            else few.set(cell, [index]);
          }
        }
      }
    }
    const reached = new Set(starts);
    const ahead = [...reached];
    const reach = (index: number): void => {
      if (reached.has(index)) return;
      reached.add(index);
      ahead.push(index);
    };
    for (let from = ahead.pop(); from !== undefined; from = ahead.pop()) {
      const node = this.#nodes[from];
      if (!node) continue;
      for (const cell of cellsOf(node)) for (const index of few.get(cell) ?? []) reach(index);
      many = many.filter(({ index, read }) => {
        if (reached.has(index)) return false;
        if (read.sheet !== node.sheet || !meets(read.area, node.area)) return true;
        reach(index);
        return false;
      });
    }
    return reached;
  }

  /**
   * The circles among some formulas: formulas each of which reads the next, and the last the first.
   * @param among places among the nodes
   * @returns each circle once, in the order in which its formulas read one another as far as one way round shows
   */
  circles(among: ReadonlySet<number>): number[][] {
    // Tarjan's algorithm for strongly connected components, without recursion.
    const found: number[][] = [];
    const orders = new Map<number, number>();
    const lows = new Map<number, number>();
    const open: number[] = [];
    const isOpen = new Set<number>();
    const begin = (index: number) => {
      orders.set(index, orders.size);
      lows.set(index, orders.size - 1);
      open.push(index);
      isOpen.add(index);
      return { index, reads: this.#readBy(index, among) };
    };
    for (const start of among) {
      if (orders.has(start)) continue;
      const path = [begin(start)];
      for (let at = path.at(-1); at; at = path.at(-1)) {
        const { index } = at;
        const next = at.reads.next();
        if (!next.done) {
          if (!orders.has(next.value)) path.push(begin(next.value));
          else if (isOpen.has(next.value)) {
            lows.set(index, Math.min(lows.get(index) ?? 0, orders.get(next.value) ?? 0));
          }
          continue;
        }
        path.pop();
        const above = path.at(-1)?.index;
        if (above !== undefined) {
          lows.set(above, Math.min(lows.get(above) ?? 0, lows.get(index) ?? 0));
        }
        if (lows.get(index) !== orders.get(index)) continue;
        const group: number[] = [];
        for (let each = open.pop(); each !== undefined; each = open.pop()) {
          isOpen.delete(each);
          group.unshift(each);
          if (each === index) break;
        }
        if (group.length > 1 || this.#readsItself(index)) found.push(group);
      }
    }
    return found;
  }

  #readsItself(index: number): boolean {
    const node = this.#nodes[index];
    return node?.reads.some(({ sheet, area }) => sheet === node.sheet && meets(area, node.area)) ?? false;
  }

  *#readBy(index: number, among: ReadonlySet<number>): Generator<number, undefined> {
    for (const read of this.#nodes[index]?.reads ?? []) {
      for (const found of this.#read(read, false)) if (among.has(found)) yield found;
    }
    return undefined;
  }

  *#read({ sheet, area }: Read, once: boolean): Generator<number> {
    const columns = this.#columns.get(sheet);
    if (!columns) return;
    const wide = area.right - area.left + 1 > columns.size;
    const numbers = wide
      ? [...columns.keys()].filter((each) => each >= area.left && each <= area.right)
      : Array.from({ length: area.right - area.left + 1 }, (_, each) => area.left + each);
    for (const number of numbers) {
      const column = columns.get(number);
      if (!column) continue;
      const { rows, nodes, next } = column;
      for (let at = firstFrom(rows, area.top); at < rows.length; at += 1) {
        if (once) at = skip(next, at);
        if (at >= rows.length || (rows[at] ?? 0) > area.bottom) break;
        if (once) next[at] = at + 1;
        yield nodes[at] ?? -1;
      }
    }
    for (const index of this.#spilling.get(sheet) ?? []) {
      const filled = this.#nodes[index]?.area;
      if (filled && meets(filled, area)) yield index;
    }
  }
}

/** The first place from one on that was not visited; what is passed over is shortened for the next time. */
function skip(next: number[], from: number): number {
  let end = from;
  while (end < next.length && next[end] !== end) end = next[end] ?? end + 1;
  for (let at = from; at < end && at < next.length;) {
    const after = next[at] ?? end;
    next[at] = end;
    at = after;
  }
  return end;
}

function cellsOf({ sheet, area }: { readonly sheet: string; readonly area: Area }): string[] {
  const cells: string[] = [];
  for (let row = area.top; row <= area.bottom; row += 1) {
    for (let column = area.left; column <= area.right; column += 1) {
      cells.push(`${sheet}\n${String(row)}\n${String(column)}`);
    }
  }
  return cells;
}
