import ExcelJS, { type CellValue as SheetValue, type Workbook } from 'exceljs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { resultUnit } from '../../functions/result-unit';
import { libraryUs } from '../../workbench/demo/library-us';
import { makeWorkbook } from '../../workbench/demo/make-workbook';
import type { Job, WallLine } from '../../workbench/demo/wall-line';
import { workshopSi } from '../../workbench/demo/workshop-si';
import type { Bundle } from '../../workbench/engine/bundle';
import { loadBundle } from '../../workbench/engine/load-bundle';
import { estimateBook } from '../../workbench/estimate/estimate-book';
import { plainCopy } from '../../workbench/estimate/plain-copy';
import { reportCell, type ReportCell } from '../../workbench/estimate/report-cells';
import { openArchive, packArchive, partText } from '../../workbench/xlsx/archive';

// These run the built bundle: npm test builds it first.

// NIST SP 811 (2008), appendix B.8: 1 gal/ft2 = 40.745 83 L/m2.
const LITRES_M2_IN_GAL_FT2 = 3.785411784 / 0.09290304;
// Washed at the stair towers: two caps, three pairs of shafts less their slots; the glass is masked.
const TOWERS = 2 * 72 + 4 * (780 - 36) + 2 * (640 - 63);

/** Pounds of bicarbonate for gallons of class 2 concentrate: 1.02 kg/L, 5 % as HCl, mole for mole. */
function bicarbonate(gallons: number): number {
  return (((gallons * 3.785411784 * 1.02 * 0.05) / 0.036461) * 0.084007) / 0.45359237;
}

let bundle: Bundle;
let bytes: Uint8Array;
let opened: Workbook;

async function open(file: Uint8Array): Promise<Workbook> {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(Buffer.from(file) as unknown as ArrayBuffer);
  return workbook;
}

function valueAt(workbook: Workbook, sheet: string, address: string): SheetValue {
  const cell = workbook.getWorksheet(sheet)?.getCell(address);
  if (cell?.type === ExcelJS.ValueType.Formula) return cell.result;
  return cell?.value ?? null;
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

  it('keeps its values in a spreadsheet without the add-in: no recalculation is asked for', () => {
    const settings = /<calcPr[^>]*>/.exec(partText(openArchive(bytes), 'xl/workbook.xml'))?.[0];
    expect(settings).toBe('<calcPr calcId="191029"/>');
  });

  it('has a copy with plain values: no formula needs the add-in, and every number is the same', async () => {
    const { archive, says } = plainCopy(await estimateBook(openArchive(bytes), bundle));
    const copy = await open(packArchive(archive));
    const apart: string[] = [];
    let ordinary = 0;
    opened.eachSheet((sheet) => {
      sheet.eachRow((row) => {
        row.eachCell((cell) => {
          const other = copy.getWorksheet(sheet.name)?.getCell(cell.address);
          const value = cell.type === ExcelJS.ValueType.Formula ? cell.result : cell.value;
          const plain = other?.type === ExcelJS.ValueType.Formula ? other.result : other?.value;
          // An empty text that a formula gave is a blank cell where nothing gives it.
          if (JSON.stringify(plain) !== JSON.stringify(value) && !(value === '' && plain === null))
            apart.push(`${sheet.name}!${cell.address}`);
          if (other?.type !== ExcelJS.ValueType.Formula) return;
          ordinary += 1;
          if (/WASH/.test(other.formula)) apart.push(`${sheet.name}!${cell.address} ${other.formula}`);
        });
      });
    });
    expect(apart).toEqual([]);
    expect(ordinary).toBeGreaterThan(20);
    expect(says).toEqual([]);
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
    const bid = opened.getWorksheet('Bid');
    const last = bid?.rowCount ?? NaN;
    expect(valueAt(opened, 'Bid', `B${String(last)}`)).toBe('Total');
    let total = 0;
    for (let row = 4; row < last; row += 1) {
      total += numberAt(opened, 'Bid', `C${String(row)}`) * numberAt(opened, 'Bid', `E${String(row)}`);
    }
    // Each amount is rounded to a cent.
    expect(Math.abs(numberAt(opened, 'Bid', `F${String(last)}`) - total)).toBeLessThan(0.005 * last + 1e-9);
  });

  it('bids the price of the whole job in one line, and what it takes beside it', () => {
    const lines = [6, 7, 8, 9, 10, 11, 12, 13].map(String);
    expect(lines.map((row) => valueAt(opened, 'Bid', `A${row}`))).toEqual(
      [1, 2, 3, 4, 5, 6, 7, 8].map((each) => `WD-${String(each)}`),
    );
    expect(numberAt(opened, 'Bid', 'F6')).toBe(numberAt(opened, 'Estimate', 'L8'));
    const rounded = ['E', 'F', 'G', 'I'].map((column) =>
      Math.ceil(numberAt(opened, 'Estimate', `${column}8`)),
    );
    expect(['C7', 'C8', 'C9', 'C10'].map((cell) => numberAt(opened, 'Bid', cell))).toEqual(rounded);
    expect(numberAt(opened, 'Bid', 'C12')).toBe(Math.ceil(numberAt(opened, 'Estimate', 'J8')));
    expect(numberAt(opened, 'Bid', 'C13')).toBe(Math.ceil(numberAt(opened, 'Estimate', 'K8')));
  });

  it('collects and neutralises what the drawings say', () => {
    // Towers, class 1: 5 passes of 1 L/m2 run off, the mix of 1 gal on 90 ft2, and the rinse: number 10 at 400 psi gives
    // 10 x sqrt(400 / 4000) gal/min, over 8 ft2/min.
    const runoff = (TOWERS * 5) / LITRES_M2_IN_GAL_FT2 + TOWERS / 90 + TOWERS * ((10 * Math.sqrt(0.1)) / 8);
    expect(numberAt(opened, 'Estimate', 'J6')).toBeCloseTo(runoff, 6);
    // North, class 2: 520 + 2 x (1320 - 210) + 2 x (1380 - 240) + 110 + (860 - 180) + (720 - 150) + 180 ft2.
    const north = 520 + 2220 + 2280 + 110 + 680 + 570 + 180;
    expect(numberAt(opened, 'Estimate', 'K5')).toBeCloseTo(bicarbonate(north / 90 / 9), 6);
    expect(['K4', 'K6', 'K7'].map((cell) => numberAt(opened, 'Estimate', cell))).toEqual([0, 0, 0]);
  });

  it('has a price by part that adds up, down and across', () => {
    for (const column of ['B', 'C', 'D', 'E', 'F', 'G']) {
      const at = (row: number): number => numberAt(opened, 'Price', `${column}${String(row)}`);
      const direct = [4, 5, 6, 7, 8, 9, 10, 11].reduce((sum, row) => sum + at(row), 0);
      // Contingency 5 %, overhead 11 %, profit 9 %, each on all before it.
      expect(at(12)).toBeCloseTo(direct * 0.05, 6);
      expect(at(13)).toBeCloseTo(direct * 1.05 * 0.11, 6);
      expect(at(14)).toBeCloseTo(direct * 1.05 * 1.11 * 0.09, 6);
      expect(at(15)).toBeCloseTo(direct * 1.05 * 1.11 * 1.09, 6);
      expect(Math.abs(at(16) - at(15))).toBeLessThanOrEqual((column === 'G' ? 0.02 : 0.005) + 1e-9);
    }
    for (let row = 4; row <= 15; row += 1) {
      const sum = ['B', 'C', 'D', 'E'].reduce(
        (total, column) => total + numberAt(opened, 'Price', `${column}${String(row)}`),
        0,
      );
      expect(numberAt(opened, 'Price', `F${String(row)}`)).toBeCloseTo(sum, 6);
      expect(numberAt(opened, 'Price', `G${String(row)}`)).toBeCloseTo(sum, 6);
    }
    // Labour at 58 an hour of the towers' hours; their rate over 4,274 ft2.
    expect(numberAt(opened, 'Price', 'D4')).toBeCloseTo(58 * numberAt(opened, 'Estimate', 'H6'), 6);
    expect(numberAt(opened, 'Price', 'D17')).toBeCloseTo(numberAt(opened, 'Price', 'D15') / TOWERS, 9);
  });

  it('has the ladder of what to mask: the plinth for class 2, cast stone too for class 3', () => {
    const options = opened.getWorksheet('Options');
    const south = [2, 3, 4, 5].map((row) => options?.getRow(row).getCell(4).text);
    const plinth = 'LS-11 plinth, bays 1-4, LS-12 plinth, bays 5-8';
    expect(south).toEqual(['none', 'none', plinth, `LS-04 third floor sills, LS-08 belt course, ${plinth}`]);
    // As it stands: what the estimate says.
    expect(options?.getRow(3).getCell(11).text).toContain('as it stands');
    expect(numberAt(opened, 'Options', 'H3')).toBeCloseTo(numberAt(opened, 'Estimate', 'H4'), 9);
    // Nothing in the yard may meet class 3.
    expect(options?.getRow(17).getCell(11).text).toBe('not feasible');
  });

  it('has a baseline that differs by the brick of one band', () => {
    const differing: string[] = [];
    opened.getWorksheet('Walls')?.eachRow((row) => {
      row.eachCell({ includeEmpty: true }, (cell) => {
        const former = opened.getWorksheet('Baseline')?.getCell(cell.address);
        if (former?.value !== cell.value) differing.push(`${former?.text ?? ''} -> ${cell.text}`);
      });
    });
    expect(differing).toEqual(['Dark clay brick -> Sand-faced brick']);
    expect(opened.getWorksheet('Baseline')?.rowCount).toBe(libraryUs.walls.length + 1);
  });

  it('says what the swapped band does to the class, water, hours and price of its whole zone', () => {
    const [line, whole] = [2, 3].map((row) => opened.getWorksheet('Changes')?.getRow(row));
    expect([1, 2, 3, 4].map((column) => line?.getCell(column).text)).toEqual([
      'ST-03 west tower, middle band',
      'changed',
      'Material: Dark clay brick -> Sand-faced brick',
      'Stair towers 2 -> 1',
    ]);
    // Sand-faced brick of 25 g is wetted in 5 passes of 2 min, dark brick of 15 g in 2: (5 - r^2) / 2 r, squared, with
    // r = 1 / suction in kg/m2, is 8.08 and 1.67 min. Precast of 6 g: 144 ft2; the band 744 ft2; the rest 3386 ft2.
    const gram = 0.001 / (30 * 0.00064516);
    const takenUp =
      (144 * 6 + 744 * 25 + 3386 * 15) * gram * Math.sqrt(10) - (144 * 6 + 4130 * 15) * gram * Math.sqrt(4);
    const passes = 3 * TOWERS;
    const mix = TOWERS / 90;
    const water = (takenUp + passes) / LITRES_M2_IN_GAL_FT2 + mix * (20 / 21 - 8 / 9);
    // A class short where residue is moderate, or blank and not brushed: ST-03, ST-04, ST-08. Patches of 40 ft2.
    const patches = Math.ceil(TOWERS / 40);
    const other = (744 + 577 + 577) / 60 + (patches * (10 - 4) * 3) / 60;
    const hours = other * (8 / 7);
    const direct =
      58 * hours +
      (mix / 21) * 14 -
      (mix / 9) * 24 +
      0.03 * water +
      165 * (other / (3 * 7)) -
      0.85 * bicarbonate(mix / 9) +
      0.09 * (passes / LITRES_M2_IN_GAL_FT2);
    const worked = [water, 0, mix / 21 - mix / 9, hours, direct * 1.05 * 1.11 * 1.09];
    for (const row of [line, whole]) {
      worked.forEach((value, index) => {
        expect(Number(row?.getCell(5 + index).value)).toBeCloseTo(value, 6);
      });
    }
    expect(whole?.getCell(1).text).toBe('Whole difference');
  });

  it('traces the hours of the towers down to the cell', () => {
    const trace = opened.getWorksheet('Trace');
    const last = trace?.getRow(trace.rowCount);
    expect(last?.getCell(1).text).toBe('crewHours_z1');
    expect(Number(last?.getCell(3).value)).toBeCloseTo(numberAt(opened, 'Estimate', 'H6'), 9);
  });

  it('is checked: 400 psi is too much for the sand-faced band', () => {
    const checks = opened.getWorksheet('Checks');
    const found: string[] = [];
    checks?.eachRow((row) => {
      if (row.getCell(1).text === 'nozzle pressure') found.push(row.getCell(3).text);
    });
    expect(found).toContain('Stair towers');
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
    expect([...units('RUNOFF'), ...units('NEUTRALIZER')]).toEqual(['L', 'kg']);
  });

  it('shows what a swapped band does, from class 3 to class 2', async () => {
    const cells = await cellsOf(workshopSi);
    const spilled = cells.find(({ formula }) => formula.startsWith('=WASH.CHANGES('))?.value;
    const line = Array.isArray(spilled) ? (spilled[1] ?? []) : [];
    expect(line.slice(2, 4)).toEqual([
      'Material: Dark clay brick -> Manganese-coloured brick',
      'Boiler house 3 -> 2',
    ]);
    // 102 m2 at 100 ft2/gal: 1 part in 9 in place of 1 in 6. The 88 m2 of red brick need class 3, by Type S mortar:
    // scrubbed at 60 ft2/h, with set-up of 0.75 h in each shift of 8.
    const mix = (102 * LITRES_M2_IN_GAL_FT2) / 100;
    expect(Number(line[6])).toBeCloseTo(mix / 9 - mix / 6, 9);
    expect(Number(line[7])).toBeCloseTo((88 / (60 * 0.09290304)) * (8 / 7.25), 9);
  });
});
