import { areaKey, type AuditedBook, type SheetArea } from '../audited-book';
import { meet } from '../../../spreadsheet/address';
import { relativeForm } from '../../../spreadsheet/move-formula';
import type { SheetPlace } from '../references';
import { placeKey, type PlacedFormula } from '../remembered';
import { readsOf, type Reads } from './reads';
import { roleOf, type Role } from './sums';

/** A call of a Washdown function in a cell: what is asked for. */
export interface Asked {
  readonly name: string;
  /** The zone as typed; empty for the whole job. */
  readonly zone: string;
  readonly part: string;
  /** Stands for the walls, factors and headings: equal for equal questions. */
  readonly question: string;
}

/** A formula of the workbook with what it reads and who reads it. */
export interface Step extends PlacedFormula {
  readonly key: string;
  readonly form: string;
  readonly reads: Reads;
  readonly role: Role;
  /** What it asks of Washdown functions; empty for an ordinary formula. */
  readonly asked: readonly Asked[];
  readonly sources: Step[];
  readonly readers: Step[];
}

/** The formulas of a workbook, and how the result of one reaches another. */
export class Ways {
  private readonly byPlace = new Map<string, Step>();
  private readonly byRow = new Map<string, Map<number, Step[]>>();
  private readonly spilling: { readonly step: Step; readonly area: SheetArea }[] = [];
  private readonly inArea = new Map<string, readonly Step[]>();
  private readonly reached = new Map<Step, ReadonlySet<Step>>();

  /**
   * Starts without formulas.
   * @param book the workbook
   */
  constructor(readonly book: AuditedBook) {}

  /** All formulas. */
  get steps(): readonly Step[] {
    return [...this.byPlace.values()];
  }

  /** Whether some formula may read cells that its text does not name. */
  get readsAnywhere(): boolean {
    return this.steps.some(({ reads }) => reads.anywhere);
  }

  /**
   * Takes a formula in.
   * @param formula the formula and its cell
   * @param asked what it asks of Washdown functions
   * @param fills the area that it fills, where more than its cell
   */
  add(formula: PlacedFormula, asked: readonly Asked[], fills: SheetArea | undefined): void {
    const reads = readsOf(this.book, formula.formula, formula);
    const step: Step = {
      ...formula,
      key: placeKey(formula),
      form: relativeForm(formula.formula, formula),
      reads,
      role: roleOf(this.book, reads.expression, formula),
      asked,
      sources: [],
      readers: [],
    };
    this.byPlace.set(step.key, step);
    const rows = this.byRow.get(step.sheet) ?? new Map<number, Step[]>();
    this.byRow.set(step.sheet, rows);
    const inRow = rows.get(step.row) ?? [];
    inRow.push(step);
    rows.set(step.row, inRow);
    if (fills) this.spilling.push({ step, area: fills });
  }

  /**
   * Joins every formula to those that it reads, one a turn.
   * @param progress how far the whole work is
   * @yields the progress after each formula
   */
  *join<Progress>(progress: Progress): Generator<Progress, void> {
    for (const step of this.byPlace.values()) {
      const sources = new Set(step.reads.areas.flatMap((area) => this.within(area)));
      sources.delete(step);
      for (const source of sources) {
        step.sources.push(source);
        source.readers.push(step);
      }
      yield progress;
    }
  }

  /**
   * The formula that a cell shows the result of.
   * @param place the cell
   * @returns the formula; undefined for a typed cell
   */
  at(place: SheetPlace): Step | undefined {
    return (
      this.byPlace.get(placeKey(place)) ??
      this.spilling.find(
        ({ area }) =>
          meet(area, { top: place.row, bottom: place.row, left: place.column, right: place.column }) &&
          area.sheet === place.sheet,
      )?.step
    );
  }

  /**
   * Every formula that the result of one reaches.
   * @param start the formula
   * @returns those that read it, over any number of steps, without itself
   */
  from(start: Step): ReadonlySet<Step> {
    const known = this.reached.get(start);
    if (known) return known;
    const found = reach(start.readers);
    this.reached.set(start, found);
    return found;
  }

  /**
   * Every formula that any of some reach.
   * @param starts the formulas
   * @returns those that read them, over any number of steps; a start only where another reaches it
   */
  fromAll(starts: readonly Step[]): ReadonlySet<Step> {
    return reach(starts.flatMap(({ readers }) => readers));
  }

  private within(area: SheetArea): readonly Step[] {
    const key = areaKey(area);
    const known = this.inArea.get(key);
    if (known) return known;
    const rows = this.byRow.get(area.sheet) ?? new Map<number, Step[]>();
    const height = area.bottom - area.top + 1;
    const lines =
      height > rows.size
        ? [...rows].flatMap(([row, steps]) => (row >= area.top && row <= area.bottom ? steps : []))
        : Array.from({ length: height }, (_, down) => rows.get(area.top + down) ?? []).flat();
    const found = [
      ...lines.filter(({ column }) => column >= area.left && column <= area.right),
      ...this.spilling.flatMap((spill) =>
        spill.area.sheet === area.sheet && meet(spill.area, area) ? [spill.step] : [],
      ),
    ];
    this.inArea.set(key, found);
    return found;
  }
}

function reach(first: readonly Step[]): ReadonlySet<Step> {
  const found = new Set<Step>(first);
  // A set gives what is added while it is gone through.
  for (const step of found) for (const reader of step.readers) found.add(reader);
  return found;
}

/**
 * A text that stands for a number that is asked for, whatever the zone.
 * @param asked the call
 * @returns equal for calls that differ in their zone alone
 */
export function kindOf({ name, part, question }: Asked): string {
  return `${name}\n${part}\n${question}`;
}
