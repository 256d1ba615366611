import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../functions/worksheet-functions';
import { areaAddress } from '../../src/spreadsheet/address';
import { audit, type AuditReport } from '../../src/review/audit/audit';
import { AuditedBook, type Shown } from '../../src/review/audit/audited-book';
import { libraryUs } from '../../workbench/demo/library-us';
import { makeWorkbook } from '../../workbench/demo/make-workbook';
import type { Job } from '../../workbench/demo/wall-line';
import { workshopSi } from '../../workbench/demo/workshop-si';
import { loadBundle } from '../../workbench/engine/load-bundle';
import { openArchive } from '../../workbench/xlsx/archive';
import { readBook } from '../../workbench/xlsx/read-book';

// These run the built bundle: npm test builds it first.

const byName = new Map(worksheetFunctions.map((called) => [called.name, called]));

/** The workbook of a demo as Review reads it, one of its cells typed over. */
async function demo(job: Job): Promise<(typed?: Readonly<Record<string, number>>) => AuditedBook> {
  const { sheets, tables } = readBook(
    openArchive(await makeWorkbook(job, loadBundle(join(import.meta.dirname, '..', '..', 'dist')))),
  );
  return (typed = {}) => {
    const book = new AuditedBook(
      tables.map(({ name, sheet, area: { top, left, bottom, right }, columns, totalsRows }) => ({
        name,
        sheet,
        address: areaAddress({ top: top + 1, left: left + 1, bottom: bottom + 1, right: right + 1 }),
        headings: columns,
        totals: totalsRows > 0,
      })),
      [],
    );
    for (const { name: sheet, cells } of sheets) {
      for (const [address, { row, column, value, formula }] of cells) {
        const own = typed[`${sheet}!${address}`];
        const shown = own ?? (value as Shown | null) ?? '';
        const content = own ?? (formula === undefined ? shown : `=${formula}`);
        book.add({ sheet, row: row + 1, column: column + 1, formulas: [[content]], values: [[shown]] });
      }
    }
    return book;
  };
}

function reviewed(book: AuditedBook): AuditReport {
  const work = audit({ book, functionCalled: (name) => byName.get(name), remembered: [] });
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}

const onTheWay = ({ findings }: AuditReport) =>
  findings.flatMap(({ kind, sheet, address, what }) =>
    ['typed over', 'left out', 'added twice'].includes(kind) ? [`${kind} ${sheet}!${address} ${what}`] : [],
  );

describe.each([
  ['US', libraryUs],
  ['SI', workshopSi],
])('Review of the demo bid workbook in %s units', (_, job) => {
  let at: Awaited<ReturnType<typeof demo>>;
  beforeAll(async () => {
    at = await demo(job);
  });

  it('follows its price to the total of the bid, and finds nothing there', () => {
    const report = reviewed(at());
    expect(onTheWay(report)).toEqual([]);
    const total = report.followers.filter(({ sheet }) => sheet === 'Bid').at(-1);
    expect(total?.formula).toMatch(/^=SUM\(F/);
  });

  it('finds its bid line typed over', () => {
    const line = reviewed(at()).followers.find(({ formula }) => /^=Estimate!\$[A-Z]+\$\d+$/.test(formula));
    if (!line) throw new Error('no bid line');
    const row = String(line.row);
    const rate = onTheWay(reviewed(at({ [`Bid!E${row}`]: 90000 })));
    expect(rate).toHaveLength(1);
    expect(rate[0]).toMatch(/^left out Estimate!\w+ No total includes this price/);
    const amount = onTheWay(reviewed(at({ [`Bid!F${row}`]: 90000 })));
    expect(amount).toContain(`typed over Bid!F${row} Holds 90000 where a formula belongs.`);
  });
});
