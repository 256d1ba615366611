import type { SheetArea } from '../audited-book';
import { placeKey } from '../remembered';
import type { SheetPlace } from '../references';
import type { Step, Ways } from './ways';

/** A number that a total takes, itself or by way of other totals and links. */
export interface Term {
  readonly place: SheetPlace;
  /** The formula that gives it; undefined where it is typed. */
  readonly step: Step | undefined;
  /** How often it is taken. */
  readonly times: number;
}

/** What the totals of a workbook take. */
export class Adds {
  private readonly known = new Map<Step, ReadonlyMap<string, Term>>();
  private readonly openNow = new Set<Step>();
  private readonly starts = new Map<Step, ReadonlySet<Step>>();

  /**
   * Looks at one workbook.
   * @param ways its formulas
   */
  constructor(private readonly ways: Ways) {}

  /**
   * The numbers that a total comes to.
   * @param total the formula
   * @returns by cell what it takes, down through totals and links; empty for other formulas and in a circle
   */
  terms(total: Step): ReadonlyMap<string, Term> {
    const known = this.known.get(total);
    if (known) return known;
    if (this.openNow.has(total)) return new Map();
    this.openNow.add(total);
    const terms = new Map<string, Term>();
    const put = (term: Term) => {
      const key = placeKey(term.place);
      terms.set(key, { ...term, times: term.times + (terms.get(key)?.times ?? 0) });
    };
    for (const { place, step } of this.direct(total)) {
      if (step === undefined || step.role.is === 'other') put({ place, step, times: 1 });
      else for (const term of this.terms(step).values()) put(term);
    }
    this.openNow.delete(total);
    this.known.set(total, terms);
    return terms;
  }

  /**
   * The cells with a number that a total or link names itself.
   * @param total the formula
   * @returns each cell, once for every time that it is named
   */
  direct(total: Step): { readonly place: SheetPlace; readonly step: Step | undefined }[] {
    const { role } = total;
    const areas = role.is === 'total' ? role.takes : role.is === 'link' ? [role.to] : [];
    const skips = role.is === 'total' && role.skipsSubtotals;
    return areas
      .flatMap((area) => this.numbersIn(area))
      .map((place) => ({ place, step: this.ways.at(place) }))
      .filter(({ step }) => !(skips && step?.role.is === 'total' && step.role.skipsSubtotals));
  }

  /**
   * The Washdown formulas that a bid line comes from, other totals not counted: a mark-up on a total is no second line.
   * @param step a formula
   * @returns the formulas, itself where it is one
   */
  startsOf(step: Step): ReadonlySet<Step> {
    const known = this.starts.get(step);
    if (known) return known;
    const found = new Set<Step>();
    this.starts.set(step, found);
    if (step.asked.length > 0) found.add(step);
    else if (step.role.is !== 'total') {
      for (const source of step.sources) for (const start of this.startsOf(source)) found.add(start);
    }
    return found;
  }

  private numbersIn(area: SheetArea): SheetPlace[] {
    return this.ways.book
      .rows(area)
      .flatMap((line, down) =>
        line.flatMap((value, across) =>
          typeof value === 'number'
            ? [{ sheet: area.sheet, row: area.top + down, column: area.left + across }]
            : [],
        ),
      );
  }
}
