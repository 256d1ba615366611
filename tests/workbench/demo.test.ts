import ExcelJS, { type CellValue as SheetValue, type Workbook } from 'exceljs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { resultUnit } from '../../functions/result-unit';
import { libraryUs } from '../../workbench/demo/library-us';
import { makeWorkbook } from '../../workbench/demo/make-workbook';
import type { Job, WallLine } from '../../workbench/demo/wall-line';
import { workshopSi } from '../../workbench/demo/workshop-si';
import { loadBundle, type Bundle } from '../../workbench/engine/bundle';
import { estimateBook } from '../../workbench/estimate/estimate-book';
import { reportCell, type ReportCell } from '../../workbench/estimate/report-cells';
import { openArchive, partText } from '../../workbench/xlsx/archive';

// These run the built bundle: npm test builds it first.

let bundle: Bundle;
let bytes: Uint8Array;
let opened: Workbook;

async function open(file: Uint8Array): Promise<Workbook> {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(Buffer.from(file) as unknown as ArrayBuffer);
  return workbook;
}

function valueAt(workbook: Workbook, sheet: string, address: string): SheetValue {
  const { value } = workbook.getWorksheet(sheet)?.getCell(address) ?? {};
  return value !== null && typeof value === 'object' && 'result' in value
    ? (value.result ?? null)
    : (value ?? null);
}

function numberAt(workbook: Workbook, sheet: string, address: string): number {
  return Number(valueAt(workbook, sheet, address));
}

async function cellsOf(job: Job): Promise<ReportCell[]> {
  const { washdown } = await estimateBook(openArchive(await makeWorkbook(job, bundle)), bundle);
  return washdown.map((each) => reportCell(each, resultUnit));
}

function withPlinthMasked(job: Job): Job {
  const mask = (line: WallLine): WallLine => {
    const [
      wall,
      zone,
      level,
      material,
      area,
      height,
      openings,
      perimeter,
      fixtures,
      mortar,
      residue,
      brushed,
      age,
    ] = line;
    const masked = material === 'Limestone' ? 'yes' : line[13];
    return [
      wall,
      zone,
      level,
      material,
      area,
      height,
      openings,
      perimeter,
      fixtures,
      mortar,
      residue,
      brushed,
      age,
      masked,
      line[14],
    ];
  };
  return { ...job, walls: job.walls.map(mask) };
}

beforeAll(async () => {
  bundle = loadBundle(join(import.meta.dirname, '..', '..', 'dist'));
  bytes = await makeWorkbook(libraryUs, bundle);
  opened = await open(bytes);
});

describe('the demo bid workbook in US units', () => {
  it('has the size of a real job', () => {
    expect(libraryUs.walls.length).toBeGreaterThanOrEqual(40);
    expect(new Set(libraryUs.walls.map(([, zone]) => zone)).size).toBe(4);
    expect(new Set(libraryUs.walls.map((line) => line[3])).size).toBeGreaterThanOrEqual(8);
  });

  it('has a value beside every formula, and no error', () => {
    const without: string[] = [];
    opened.eachSheet((sheet) => {
      sheet.eachRow((row) => {
        row.eachCell((cell) => {
          const result: unknown = cell.result;
          const missing = result === undefined || result === null || typeof result === 'object';
          if (cell.type === ExcelJS.ValueType.Formula && missing)
            without.push(`${sheet.name}!${cell.address}`);
        });
      });
    });
    expect(without).toEqual([]);
  });

  it('is governed by the limestone plinth in the south, and by cast stone once that is masked', async () => {
    expect(valueAt(opened, 'Estimate', 'A4')).toBe('Library south');
    expect([valueAt(opened, 'Estimate', 'C4'), valueAt(opened, 'Estimate', 'D4')]).toEqual([1, 'Limestone']);
    const masked = await open(await makeWorkbook(withPlinthMasked(libraryUs), bundle));
    expect([valueAt(masked, 'Estimate', 'C4'), valueAt(masked, 'Estimate', 'D4')]).toEqual([2, 'Cast stone']);
  });

  it('masks in the south what the drawings say', () => {
    // Openings 2*260 + 2*300 + 2*340 = 1800; glazing 420; laps of half a foot along 2*176 + 2*196 + 2*168 = 1080 ft of
    // openings and along the glazing, 28 ft high and 420/28 = 15 ft long, 86 ft; 20 fixtures of 4 ft2.
    expect(numberAt(opened, 'Estimate', 'F4')).toBeCloseTo(1800 + 420 + 0.5 * (1080 + 86) + 20 * 4, 6);
    expect(numberAt(opened, 'Estimate', 'G4')).toBeCloseTo((1080 + 86) * 1.1, 6);
  });

  it('adds up: rows to zones, zones to the job, the job to the bid', () => {
    for (const column of ['E', 'F', 'G', 'H', 'I']) {
      const zones = [4, 5, 6, 7].map((row) => numberAt(opened, 'Estimate', `${column}${String(row)}`));
      const sum = zones.reduce((total, each) => total + each, 0);
      expect(numberAt(opened, 'Estimate', `${column}8`)).toBeCloseTo(sum, 6);
      expect(numberAt(opened, 'Estimate', `${column}9`)).toBeCloseTo(sum, 6);
    }
    const rows = opened.getWorksheet('Rows');
    const place = (rows?.getRow(1).values as string[]).findIndex((heading) => heading === 'Water (gal)');
    const water = libraryUs.walls.reduce(
      (total, _, index) => total + Number(rows?.getRow(index + 2).getCell(place).value),
      0,
    );
    expect(water).toBeCloseTo(numberAt(opened, 'Estimate', 'E8'), 6);
    expect(numberAt(opened, 'Bid', 'C7')).toBe(Math.ceil(numberAt(opened, 'Estimate', 'E8')));
    const lines = libraryUs.before.length + libraryUs.after.length + 5;
    let total = 0;
    for (let row = 4; row < 4 + lines; row += 1) {
      total += numberAt(opened, 'Bid', `C${String(row)}`) * numberAt(opened, 'Bid', `E${String(row)}`);
    }
    // Each amount is rounded to a cent.
    expect(Math.abs(numberAt(opened, 'Bid', `F${String(4 + lines)}`) - total)).toBeLessThan(
      0.005 * lines + 1e-9,
    );
  });

  it('stores its formulas so that a spreadsheet finds the functions and spills them', () => {
    const archive = openArchive(bytes);
    expect(partText(archive, 'xl/worksheets/sheet4.xml')).toContain(
      '<f>_xldudf_WASH_WATER(Walls[#All],$A4,Factors[#All])</f>',
    );
    expect(partText(archive, 'xl/worksheets/sheet5.xml')).toMatch(
      /<c r="A1"[^>]* cm="1"[^>]*><f t="array" ref="A1:[A-Z]+5">/,
    );
  });

  it('comes out the same when it is estimated again', async () => {
    const before = openArchive(bytes);
    const { archive } = await estimateBook(before, bundle);
    for (const [path, part] of before)
      expect([path, Buffer.from(archive.get(path) ?? [])]).toEqual([path, Buffer.from(part)]);
  });
});

describe('the demo bid workbook in metric units', () => {
  it('has its quantities in metric units', async () => {
    const cells = await cellsOf(workshopSi);
    expect(cells.filter(({ error }) => error !== undefined)).toEqual([]);
    const units = (id: string): Set<string> =>
      new Set(cells.filter(({ formula }) => formula.startsWith(`=WASH.${id}(`)).map(({ unit }) => unit));
    expect([...units('WATER'), ...units('MASKING'), ...units('TAPE')]).toEqual(['L', 'm2', 'm']);
  });
});
