import { AuditedBook, type AuditedName, type Shown } from '../../../src/review/audit/audited-book';
import type { Outcome } from '../../../src/review/audit/outcome';
import type { AuditedFunction } from '../../../src/review/audit/work-out';
import { badInput, nothingHere } from '../../../src/quantity/problem';

/** A cell as a test writes it: a value, or a formula with what the cell shows. */
export type Cell = Shown | { readonly formula: string; readonly shows: Shown };

interface Table {
  readonly name: string;
  readonly sheet: string;
  readonly address: string;
  readonly headings: readonly string[];
  readonly totals?: boolean;
}

export function book(
  sheets: Readonly<Record<string, readonly (readonly Cell[])[]>>,
  tables: readonly Table[] = [],
  names: readonly AuditedName[] = [],
): AuditedBook {
  const made = new AuditedBook(
    tables.map((table) => ({ totals: false, ...table })),
    names,
  );
  for (const [sheet, rows] of Object.entries(sheets)) {
    const width = Math.max(...rows.map((row) => row.length));
    const filled = rows.map((row) => Array.from({ length: width }, (_, index): Cell => row[index] ?? ''));
    made.add({
      sheet,
      row: 1,
      column: 1,
      formulas: filled.map((row) => row.map((cell) => (typeof cell === 'object' ? cell.formula : cell))),
      values: filled.map((row) => row.map((cell) => (typeof cell === 'object' ? cell.shows : cell))),
    });
  }
  return made;
}

const matrix = (name: string, optional = false) => ({ name, dimensionality: 'matrix' as const, optional });
const scalar = (name: string, optional = true) => ({ name, dimensionality: 'scalar' as const, optional });

/** Small functions of the same shapes as the real ones, whose results can be worked out in the head. */
export function smallFunctions(): {
  readonly functionCalled: (name: string) => AuditedFunction | undefined;
  readonly runs: string[];
} {
  const runs: string[] = [];
  const logged = (name: string, run: (args: readonly unknown[]) => Outcome) => (args: readonly unknown[]) => {
    runs.push(name);
    return run(args);
  };
  const functions: Record<string, AuditedFunction> = {
    // Sum of the second column of those rows whose first column is the zone.
    AREA: {
      parameters: [matrix('walls'), scalar('zone'), matrix('factors', true)],
      run: logged('AREA', ([walls, zone, factors]) => {
        const rows = (walls as unknown[][]).slice(1);
        const mine = rows.filter(([name]) => zone === null || zone === '' || name === zone);
        if (mine.length === 0) throw nothingHere(`No wall is in the zone "${String(zone)}".`);
        if (mine.some(([, area]) => typeof area !== 'number')) throw badInput('An area is no number.');
        const times = factors === null ? 1 : Number((factors as unknown[][])[0]?.[1] ?? 1);
        return mine.reduce((sum, [, area]) => sum + Number(area), 0) * times;
      }),
    },
    LINES: {
      parameters: [matrix('walls')],
      run: logged(
        'LINES',
        ([walls]) => (walls as Outcome & unknown[][]).map(([name, area]) => [name, area]) as Outcome,
      ),
    },
    CHECKS: {
      parameters: [matrix('walls'), scalar('zone'), matrix('factors', true), matrix('headings', true)],
      run: logged('CHECKS', ([walls]) => [
        ['Check', 'What', 'Where', 'Why', 'What to do', 'Source'],
        [
          'size',
          `There are ${String((walls as unknown[][]).length - 1)} walls.`,
          'all',
          'That is known.',
          'Count them.',
          'none',
        ],
      ]),
    },
  };
  return { functionCalled: (name) => functions[name], runs };
}

/** Three walls in two zones, in a table on a sheet of their own. */
export const WALLS = {
  sheets: {
    Walls: [
      ['Zone', 'Area'],
      ['North', 100],
      ['South', 20],
      ['North', 3],
    ],
  },
  table: { name: 'Walls', sheet: 'Walls', address: 'A1:B4', headings: ['Zone', 'Area'] },
} as const;
