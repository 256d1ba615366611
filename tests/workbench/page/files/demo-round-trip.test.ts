import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { libraryUs } from '../../../../workbench/demo/library-us';
import { makeWorkbook } from '../../../../workbench/demo/make-workbook';
import { workshopSi } from '../../../../workbench/demo/workshop-si';
import { loadBundle } from '../../../../workbench/engine/load-bundle';
import { openWorkbook } from '../../../../workbench/page/files/open-workbook';
import { saveWorkbook } from '../../../../workbench/page/files/save-workbook';
import type { OpenedWorkbook } from '../../../../workbench/page/files/shown-workbook';
import { openArchive } from '../../../../workbench/xlsx/archive';
import { readBook } from '../../../../workbench/xlsx/read-book';
import { throughSpreadsheet } from './through-spreadsheet';
import { readWithExceljs, workbookFacts } from './read-with-exceljs';

describe.each([
  ['US', libraryUs],
  ['metric', workshopSi],
])('the demo bid workbook in %s units', (_, job) => {
  let bytes: Uint8Array;
  let opened: OpenedWorkbook;

  beforeAll(async () => {
    bytes = await makeWorkbook(job, loadBundle(join(import.meta.dirname, '..', '..', '..', '..', 'dist')));
    opened = await openWorkbook(bytes);
  });

  it('is shown with its formulas as they are typed, and each spill in its first cell alone', () => {
    const { snapshot, spills, tables } = opened;
    const sheet = Object.values(snapshot.sheets).find(({ name }) => name === 'Estimate');
    expect(sheet?.cellData?.[3]?.[4]?.f).toBe('=WASH.WATER(Walls[#All],$A4,Factors[#All])');
    expect(tables.map(({ name }) => name)).toEqual(['Walls', 'Factors', 'Baseline', 'Alternates', 'Actuals']);
    expect(tables[0]?.address).toBe(`A1:P${String(job.walls.length + 1)}`);
    const materials = Object.values(snapshot.sheets).find(({ name }) => name === 'Materials');
    expect(materials?.cellData?.[0]?.[0]?.f).toBe('=WASH.MATERIALS(Factors[#All])');
    expect(materials?.cellData?.[1]?.[0]?.v).toBeUndefined();
    const spill = spills.find((each) => each.sheet === 'Materials');
    expect(spill?.address).toMatch(/^A1:J\d+$/);
    expect(spill?.values[0]?.[0]).toBe('Code');
  });

  it('says what it does not show', () => {
    expect(opened.notShown).toEqual(['conditional formats', 'validation of entries']);
  });

  it('is the same to two readers after it was opened and saved', async () => {
    const { bytes: saved, lost } = await saveWorkbook(opened, bytes);
    expect(lost).toEqual([]);
    expect(readBook(openArchive(saved))).toEqual(readBook(openArchive(bytes)));
    expect(workbookFacts(await readWithExceljs(saved))).toEqual(workbookFacts(await readWithExceljs(bytes)));
  });

  it('keeps everything but its sheets to the byte, also when the spreadsheet had it in between', async () => {
    const { bytes: saved } = await saveWorkbook(throughSpreadsheet(opened), bytes);
    const [before, after] = [openArchive(bytes), openArchive(saved)];
    expect([...after.keys()]).toEqual([...before.keys()]);
    const changed = [...before.keys()].filter(
      (path) => !Buffer.from(before.get(path) ?? []).equals(Buffer.from(after.get(path) ?? [])),
    );
    expect(changed.every((path) => path.startsWith('xl/worksheets/sheet'))).toBe(true);
    expect(readBook(after)).toEqual(readBook(before));
  });

  it('opens again as it was', async () => {
    const { bytes: saved } = await saveWorkbook(opened, bytes);
    expect(await openWorkbook(saved)).toEqual(opened);
  });

  it('can be saved without the file that it came from', async () => {
    const { bytes: saved, lost } = await saveWorkbook(opened);
    expect(lost).toEqual([]);
    const [made, original] = [readBook(openArchive(saved)), readBook(openArchive(bytes))];
    expect(made.sheets.map(({ name, cells }) => [name, cells])).toEqual(
      original.sheets.map(({ name, cells }) => [name, cells]),
    );
    expect(made.tables).toEqual(original.tables);
    const looks = (each: Awaited<ReturnType<typeof readWithExceljs>>): unknown =>
      each.worksheets.flatMap((sheet) => {
        const found: unknown[] = [];
        sheet.eachRow((row) => {
          row.eachCell(({ address, style }) => {
            const { bold, italic, size, name } = style.font ?? {};
            // The file that was made anew has no theme, and says the colour of a border.
            const lines = Object.entries(style.border ?? {}).map(([side, line]) => [side, line.style]);
            found.push([
              [sheet.name, address, style.numFmt ?? 'General', bold ?? false, italic ?? false, size, name],
              style.alignment,
              lines.filter(([, line]) => line !== undefined),
            ]);
          });
        });
        return [found, sheet.columns.map(({ width }) => Math.round(width ?? 0)), sheet.views];
      });
    expect(looks(await readWithExceljs(saved))).toEqual(looks(await readWithExceljs(bytes)));
  });
});
