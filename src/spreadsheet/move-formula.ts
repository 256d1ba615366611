import { columnLetters, columnNumber, LAST_COLUMN, LAST_ROW } from './address';
import { tokensOf } from './tokens';

/** A cell by its row and column, from 1. */
export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

type Rewrite = (place: number, fixed: boolean) => string;

const OUTSIDE = '#';
const CORNER = /(\$?)([A-Z]{1,3})(\$?)(\d+)|(\$?)([A-Z]{1,3})|(\$?)(\d+)/gi;

/**
 * A formula as it would read after being filled from one cell into another: what is not fixed by `$` moves along.
 * @param formula with or without `=`
 * @param from where it stands
 * @param to where it goes
 * @returns the formula there; `#REF!` for what would lie outside of the sheet
 */
export function moveFormula(formula: string, from: CellPlace, to: CellPlace): string {
  return rewriteAddresses(formula, (address) => {
    const by = (distance: number, last: number, write: (place: number) => string): Rewrite => {
      return (place, fixed) => {
        const moved = fixed ? place : place + distance;
        return moved < 1 || moved > last ? OUTSIDE : (fixed ? '$' : '') + write(moved);
      };
    };
    const moved = rewriteCorners(
      address,
      by(to.column - from.column, LAST_COLUMN, columnLetters),
      by(to.row - from.row, LAST_ROW, String),
    );
    return moved.includes(OUTSIDE) ? '#REF!' : moved;
  });
}

/**
 * A formula with its addresses written from where it stands: equal for all cells that one formula was filled into.
 * @param formula with or without `=`
 * @param at where it stands
 * @returns a text to compare by
 */
export function relativeForm(formula: string, at: CellPlace): string {
  const from = (axis: string, origin: number): Rewrite => {
    return (place, fixed) => (fixed ? `${axis}${String(place)}` : `${axis}[${String(place - origin)}]`);
  };
  return rewriteAddresses(formula, (address) =>
    rewriteCorners(address, from('C', at.column), from('R', at.row)),
  );
}

function rewriteCorners(address: string, column: Rewrite, row: Rewrite): string {
  return address.replace(CORNER, (_, ...parts: (string | undefined)[]) => {
    const [columnFixed, letters, rowFixed, digits, wholeColumnFixed, wholeColumn, wholeRowFixed, wholeRow] =
      parts;
    const across = letters ?? wholeColumn;
    const down = digits ?? wholeRow;
    return (
      (across === undefined ? '' : column(columnNumber(across), (columnFixed ?? wholeColumnFixed) === '$')) +
      (down === undefined ? '' : row(Number(down), (rowFixed ?? wholeRowFixed) === '$'))
    );
  });
}

function rewriteAddresses(formula: string, rewrite: (address: string) => string): string {
  return tokensOf(formula)
    .map(({ kind, text }) => {
      if (kind !== 'reference') return text;
      const start = text.lastIndexOf('!') + 1;
      return text.slice(0, start) + rewrite(text.slice(start));
    })
    .join('');
}
