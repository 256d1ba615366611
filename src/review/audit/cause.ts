import { comparable } from '../../quantity/cell';
import type { Problem } from '../../quantity/problem';
import { cellAddress } from '../../spreadsheet/address';
import { said } from './agree';
import type { AuditFinding, FindingPlace } from './audit-finding';
import type { AuditedBook, SheetArea } from './audited-book';
import type { SheetPlace } from './references';

/**
 * The cell that a problem is about.
 * @param book the workbook
 * @param problem what could not be read
 * @param areas the ranges that were read
 * @returns the cell in the row of the problem that holds the value seen, under its heading where there are several;
 * undefined where there is none
 */
export function causeOf(
  book: AuditedBook,
  problem: Problem | undefined,
  areas: readonly SheetArea[],
): SheetPlace | undefined {
  const { row, column = '', seen } = problem ?? {};
  if (row === undefined || seen === undefined) return undefined;
  const places = areas.flatMap((area) => {
    const rows = book.rows(area);
    return (rows[row - 1] ?? []).flatMap((shown, across) => {
      const heading = comparable(String(rows[0]?.[across] ?? ''));
      const place = { sheet: area.sheet, row: area.top + row - 1, column: area.left + across };
      return said(shown) === seen ? [{ place, named: heading === comparable(column) }] : [];
    });
  });
  return (places.find(({ named }) => named) ?? places[0])?.place;
}

/** A finding, with the cell that is to blame for it where that is known. */
export interface CausedFinding extends AuditFinding {
  readonly cause?: SheetPlace;
}

/**
 * Findings of one cause put together: one finding at the cell that is to blame, with the cells that are in error for it.
 * @param findings what was found, cell by cell
 * @param reached the cells in error that the result of a cell reaches
 * @returns the findings; what has no cause of its own stays as it is
 */
export function byCause(
  findings: readonly CausedFinding[],
  reached: (place: FindingPlace) => readonly FindingPlace[],
): AuditFinding[] {
  const causes = new Map<
    string,
    { readonly first: CausedFinding; readonly places: Map<string, FindingPlace> }
  >();
  const rest: AuditFinding[] = [];
  const name = ({ sheet, address }: FindingPlace) => `${sheet}!${address}`;
  for (const { cause, ...finding } of findings) {
    const { sheet, address } = finding;
    if (cause === undefined) {
      const places = finding.kind === 'error' ? reached({ sheet, address }) : [];
      rest.push(places.length === 0 ? finding : { ...finding, reaches: places });
      continue;
    }
    const key = `${cause.sheet}!${cellAddress(cause.row, cause.column)}`;
    const known = causes.get(key) ?? {
      first: { ...finding, cause },
      places: new Map<string, FindingPlace>(),
    };
    causes.set(key, known);
    for (const place of [
      ...(finding.formula === undefined ? [] : [{ sheet, address }]),
      ...reached({ sheet, address }),
    ]) {
      known.places.set(name(place), place);
    }
  }
  const together = [...causes.values()].flatMap(({ first, places }): AuditFinding[] => {
    const { cause, what } = first;
    if (!cause) return [];
    return [
      {
        kind: 'error',
        sheet: cause.sheet,
        address: cellAddress(cause.row, cause.column),
        what,
        todo: 'Correct this cell: every cell named with it then has its number again.',
        reaches: [...places.values()],
      },
    ];
  });
  return [...together, ...rest];
}
