import ExcelJS, { type CellValue as SheetValue, type Workbook } from 'exceljs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { resultUnit } from '../../functions/result-unit';
import { libraryUs } from '../../workbench/demo/library-us';
import { makeWorkbook } from '../../workbench/demo/make-workbook';
import { baselineOf, WALL_HEADINGS, type Job, type WallLine } from '../../workbench/demo/wall-line';
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

/** Pounds of bicarbonate for gallons of class 2 concentrate: 1.02 kg/L, 5% as HCl, mole for mole. */
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

const MASKED = WALL_HEADINGS.indexOf('Masked');

function withPlinthMasked(job: Job): Job {
  const mask = (line: WallLine): WallLine =>
    line[3] === 'Limestone' ? (line.with(MASKED, 'yes') as unknown as WallLine) : line;
  return { ...job, walls: job.walls.map(mask) };
}

/** The cell of a zone under a heading of the schedule. */
function scheduled(heading: string, zone: string): number {
  const sheet = opened.getWorksheet('Schedule');
  const column = (sheet?.getRow(1).values as string[]).indexOf(heading);
  let value = NaN;
  sheet?.eachRow((row) => {
    if (row.getCell(1).text === zone) value = Number(row.getCell(column).value);
  });
  return value;
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
    for (const column of ['E', 'F', 'G', 'H', 'I', 'J', 'K', 'L', 'M']) {
      const zones = [4, 5, 6, 7].map((row) => numberAt(opened, 'Estimate', `${column}${String(row)}`));
      const sum = zones.reduce((total, each) => total + each, 0);
      // A price is rounded to a cent in each zone and in the job.
      const off = column === 'M' ? 0.005 * 5 : 1e-6;
      expect(Math.abs(numberAt(opened, 'Estimate', `${column}8`) - sum)).toBeLessThanOrEqual(off + 1e-9);
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
    const lines = [6, 7, 8, 9, 10, 11, 12, 13, 14].map(String);
    expect(lines.map((row) => valueAt(opened, 'Bid', `A${row}`))).toEqual(
      [1, 2, 3, 4, 5, 6, 7, 8, 9].map((each) => `WD-${String(each)}`),
    );
    expect(numberAt(opened, 'Bid', 'F6')).toBe(numberAt(opened, 'Estimate', 'M8'));
    const rounded = ['E', 'F', 'G', 'J'].map((column) =>
      Math.ceil(numberAt(opened, 'Estimate', `${column}8`)),
    );
    expect(['C7', 'C8', 'C9', 'C10'].map((cell) => numberAt(opened, 'Bid', cell))).toEqual(rounded);
    expect(numberAt(opened, 'Bid', 'C13')).toBe(Math.ceil(numberAt(opened, 'Estimate', 'K8')));
    expect(numberAt(opened, 'Bid', 'C14')).toBe(Math.ceil(numberAt(opened, 'Estimate', 'L8')));
    expect(numberAt(opened, 'Bid', 'C11')).toBeCloseTo(numberAt(opened, 'Estimate', 'I8'), 0);
    expect(numberAt(opened, 'Bid', 'C12')).toBeCloseTo(numberAt(opened, 'Estimate', 'H8'), 0);
  });

  it('collects and neutralizes what the drawings say', () => {
    // Towers, class 1, one pass: 0.6 gal to rinse a square foot. The moderate walls are scrubbed 0.4 x 0.5 / 18 h x 60
    // by 2 persons = 0.33 min/ft2, which the 5 min on 8 ft2 hold beside rinsing.
    expect(scheduled('Rinse water (gal)', 'Stair towers')).toBeCloseTo(0.6 * TOWERS, 6);
    const of = (heading: string): number => scheduled(heading, 'Stair towers');
    const runoff = of('Water (gal)') + of('Concentrate (gal)') - of('Water taken up (gal)');
    expect(numberAt(opened, 'Estimate', 'K6')).toBeCloseTo(runoff, 6);
    // North, class 2: 520 + 2 x (1320 - 210) + 2 x (1380 - 240) + 110 + (860 - 180) + (720 - 150) + 180 ft2, at 60
    // ft2/gal of 1 part in 9, and 5% cleaned once more. The masked portal is washed afterwards with detergent.
    const north = 520 + 2220 + 2280 + 110 + 680 + 570 + 180;
    expect(numberAt(opened, 'Estimate', 'L5')).toBeCloseTo(bicarbonate((north * 1.05) / 60 / 9), 6);
    expect(numberAt(opened, 'Estimate', 'J5')).toBeCloseTo((1.05 / 60) * (north / 9 + (260 + 95) / 65), 6);
    expect(['L4', 'L6', 'L7'].map((cell) => numberAt(opened, 'Estimate', cell))).toEqual([0, 0, 0]);
  });

  it('shows labor-hours and the crew-hours of two teams of two, and the two numbers that are checked first', () => {
    for (const row of ['4', '5', '6', '7', '8']) {
      const at = (column: string): number => numberAt(opened, 'Estimate', `${column}${row}`);
      expect(at('H')).toBeCloseTo(4 * at('I'), 9);
      expect(at('O')).toBeCloseTo(at('N') / at('H'), 9);
      expect(at('P')).toBeCloseTo(at('M') / at('N'), 9);
    }
    expect(numberAt(opened, 'Estimate', 'N6')).toBeCloseTo(TOWERS, 9);
    // Public norms of a whole clean run from 25 to 68 ft2 per labor-hour; this one has strong mortar, heavy residue and
    // much to mask, sample panels and re-cleaning.
    const whole = numberAt(opened, 'Estimate', 'O8');
    expect(whole).toBeGreaterThan(12);
    expect(whole).toBeLessThan(68);
  });

  it('has a price by part that adds up, down and across', () => {
    for (const column of ['B', 'C', 'D', 'E', 'F', 'G']) {
      const at = (row: number): number => numberAt(opened, 'Price', `${column}${String(row)}`);
      const direct = [4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14].reduce((sum, row) => sum + at(row), 0);
      // Supervision 8% of labor; contingency 5%, overhead 11%, profit 9%, each on all before it; no least price.
      const supervised = direct + at(4) * 0.08;
      expect(at(15)).toBeCloseTo(at(4) * 0.08, 6);
      expect(at(16)).toBeCloseTo(supervised * 0.05, 6);
      expect(at(17)).toBeCloseTo(supervised * 1.05 * 0.11, 6);
      expect(at(18)).toBeCloseTo(supervised * 1.05 * 1.11 * 0.09, 6);
      expect(at(19)).toBe(0);
      expect(at(20)).toBeCloseTo(supervised * 1.05 * 1.11 * 1.09, 6);
      expect(Math.abs(at(21) - at(20))).toBeLessThanOrEqual((column === 'G' ? 0.02 : 0.005) + 1e-9);
    }
    for (let row = 4; row <= 20; row += 1) {
      const sum = ['B', 'C', 'D', 'E'].reduce(
        (total, column) => total + numberAt(opened, 'Price', `${column}${String(row)}`),
        0,
      );
      expect(numberAt(opened, 'Price', `F${String(row)}`)).toBeCloseTo(sum, 6);
      expect(numberAt(opened, 'Price', `G${String(row)}`)).toBeCloseTo(sum, 6);
    }
    // Labor at 58 an hour of the towers' labor-hours; their rate over 4,274 ft2; the job's sums in full.
    expect(numberAt(opened, 'Price', 'D4')).toBeCloseTo(58 * numberAt(opened, 'Estimate', 'H6'), 6);
    expect(numberAt(opened, 'Price', 'D22')).toBeCloseTo(numberAt(opened, 'Price', 'D20') / TOWERS, 9);
    expect([12, 13, 14].map((row) => numberAt(opened, 'Price', `F${String(row)}`))).toEqual(
      [1650, 880, 420].map((sum) => expect.closeTo(sum, 6) as number),
    );
    // Hired by whole days for two teams: pumps at 165, lifts at 215.
    const hired = numberAt(opened, 'Price', 'F8') / 165;
    expect(hired / 2).toBeCloseTo(Math.round(hired / 2), 6);
    expect(numberAt(opened, 'Price', 'F9')).toBeCloseTo(215 * hired, 6);
  });

  it('has the ladder of what to mask: the plinth for class 2, cast stone too for class 3', () => {
    const options = opened.getWorksheet('Options');
    const [asMarked, ...south] = [2, 3, 4, 5, 6].map((row) => options?.getRow(row).getCell(4).text);
    const glazing = 'LS-07 stair hall glazing';
    const plinth = 'LS-11 plinth, bays 1-4, LS-12 plinth, bays 5-8';
    expect(asMarked).toBe(glazing);
    expect(south).toEqual([
      'none',
      glazing,
      `${glazing}, ${plinth}`,
      `LS-04 third floor sills, ${glazing}, LS-08 belt course, ${plinth}`,
    ]);
    // As it stands: what the estimate says, over the same washed area as every other line.
    expect(options?.getRow(2).getCell(2).text).toBe('as marked');
    expect(numberAt(opened, 'Options', 'I2')).toBeCloseTo(numberAt(opened, 'Estimate', 'H4'), 9);
    const areas = [2, 3, 4, 5, 6].map((row) => numberAt(opened, 'Options', `F${String(row)}`));
    for (const area of areas) expect(area).toBeCloseTo(numberAt(opened, 'Estimate', 'N4'), 9);
    // Nothing in the yard may meet class 3.
    expect(options?.getRow(21).getCell(15).text).toBe('not offered');
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

  it('says what the swapped band does to the class, water, hours and price of its whole zone', async () => {
    const [line, whole] = [2, 3].map((row) => opened.getWorksheet('Changes')?.getRow(row));
    expect([1, 2, 3, 4].map((column) => line?.getCell(column).text)).toEqual([
      'ST-03 west tower, middle band',
      'changed',
      'Material: Dark clay brick -> Sand-faced brick',
      'Stair towers 2 -> 1',
    ]);
    // The same bid, with the band as it was.
    const former = await open(await makeWorkbook({ ...libraryUs, walls: baselineOf(libraryUs) }, bundle));
    const gain = (cell: string): number =>
      numberAt(opened, 'Estimate', cell) - numberAt(former, 'Estimate', cell);
    const mix = (TOWERS * 1.05) / 60;
    const worked = [gain('E8'), 0, mix / 65 - mix / 9, gain('H8')];
    for (const row of [line, whole]) {
      worked.forEach((value, index) => {
        expect(Number(row?.getCell(5 + index).value)).toBeCloseTo(value, 6);
      });
      expect(Math.abs(Number(row?.getCell(9).value) - gain('M8'))).toBeLessThanOrEqual(0.01 + 1e-9);
    }
    // A milder class asks for more brushing.
    expect(gain('H8')).toBeGreaterThan(0);
    expect(whole?.getCell(1).text).toBe('Total change');
  });

  it('traces the hours of the towers down to the cell', () => {
    const trace = opened.getWorksheet('Trace');
    const last = trace?.getRow(trace.rowCount);
    expect(last?.getCell(1).text).toBe('laborHours_z3');
    expect(Number(last?.getCell(3).value)).toBeCloseTo(numberAt(opened, 'Estimate', 'H6'), 9);
  });

  it('is checked: 400 psi is too much for the sand-faced band', () => {
    const checks = opened.getWorksheet('Checks');
    const found: string[] = [];
    checks?.eachRow((row) => {
      if (row.getCell(1).text === 'nozzle pressure') found.push(row.getCell(3).text);
    });
    expect(found).toContain('Stair towers: ST-03 west tower, middle band');
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
    expect([...units('WATER'), ...units('MASKING'), ...units('TAPE')]).toEqual(['L', 'm²', 'm']);
    expect([...units('RUNOFF'), ...units('NEUTRALIZER')]).toEqual(['L', 'kg']);
  });

  it('shows what a swapped band does, from class 3 to class 2', async () => {
    const cells = await cellsOf(workshopSi);
    const spilled = cells.find(({ formula }) => formula.startsWith('=WASH.CHANGES('))?.value;
    const line = Array.isArray(spilled) ? (spilled[1] ?? []) : [];
    expect(line.slice(2, 4)).toEqual([
      'Material: Dark clay brick -> Manganese-colored brick',
      'Boiler house 3 -> 2',
    ]);
    // 102 m2 at 70 ft2/gal and 5% cleaned once more: 1 part in 9 in place of 1 in 6. The red brick is brushed more.
    const mix = (102 * LITRES_M2_IN_GAL_FT2 * 1.05) / 70;
    expect(Number(line[6])).toBeCloseTo(mix / 9 - mix / 6, 9);
    expect(Number(line[7])).toBeGreaterThan(0);
  });
});
