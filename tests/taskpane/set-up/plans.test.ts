import { describe, expect, it } from 'vitest';
import { factors as table } from '../../../src/rules/factors';
import { readFactors } from '../../../src/rules/read-factors';
import { readWalls } from '../../../src/walls/read-walls';
import { formulaFor, quoted } from '../../../taskpane/shared/formulas';
import { freeName } from '../../../taskpane/shared/free-name';
import { FreeNames } from '../../../taskpane/shared/free-names';
import {
  formatsOf,
  formulasAt,
  insertable,
  inTheWay,
  spillOf,
  withoutWords,
  type Wanted,
} from '../../../taskpane/set-up/insert-formulas';
import { functionNamed } from '../../../taskpane/shared/job-summary';
import { formRows } from '../../../taskpane/shared/factor-table-rows';
import { exampleWalls, newEstimate } from '../../../taskpane/set-up/new-estimate';
import { placeOfProblem, readTest } from '../../../taskpane/set-up/read-test';
import { planTable } from '../../../taskpane/set-up/plan-table';
import { readSource } from '../../../taskpane/shared/wall-source';
import { MemoryWorkbook } from '../../../taskpane/workbook/memory-workbook';
import { evaluate } from '../evaluate';

describe('names', () => {
  it('are counted up where they are taken, in any case', async () => {
    expect(freeName('Walls', ['Sheet1'], ' ')).toBe('Walls');
    expect(freeName('Walls', ['WALLS', 'walls 2'], ' ')).toBe('Walls 3');
    const workbook = new MemoryWorkbook({
      sheets: { Walls: [['Wall']] },
      tables: [{ name: 'Factors', sheet: 'Walls', address: 'A1' }],
      names: [{ name: 'Walls', refersTo: '=Walls!$A$1' }],
    });
    const names = await FreeNames.of(workbook);
    expect([names.sheet('Walls'), names.sheet('Walls'), names.sheet('Estimate')]).toEqual([
      'Walls 2',
      'Walls 3',
      'Estimate',
    ]);
    expect([names.table('Walls'), names.table('Factors')]).toEqual(['Walls2', 'Factors2']);
  });
});

describe('formulas', () => {
  const source = {
    walls: { table: 'Walls' },
    factors: { sheet: 'My factors', address: 'A1:B9' },
    headings: { table: 'Headings' },
  };
  it.each([
    ['WATER', source, {}, "=WASH.WATER(Walls[#All],,'My factors'!$A$1:$B$9,,Headings[#All])"],
    ['WATER', { walls: source.walls }, { part: '"rinse"' }, '=WASH.WATER(Walls[#All],,,"rinse")'],
    ['CLASS', { walls: source.walls }, { zone: quoted('Bay "A"') }, '=WASH.CLASS(Walls[#All],"Bay ""A""")'],
    ['FACTORS', source, {}, "=WASH.FACTORS('My factors'!$A$1:$B$9)"],
    ['SOURCES', source, {}, '=WASH.SOURCES()'],
    ['TRACE', { walls: source.walls }, { quantity: '"water"' }, '=WASH.TRACE("water",Walls[#All])'],
  ])('%s', (name, from, asked, formula) => {
    expect(formulaFor(functionNamed(name), from, asked)).toEqual({ formula });
  });
});

describe.each(['US', 'SI'] as const)('a new estimate in %s', (system) => {
  it('has walls that can be read, whose factors change nothing but the units', () => {
    const factors = readFactors(formRows(system).rows);
    expect(factors.system).toBe(system);
    expect(table.filter(({ id }) => factors.overridden(id)).map(({ id }) => id)).toEqual([]);
    expect(factors.chosenClass).toBeUndefined();
    expect(readWalls(exampleWalls(system), factors).map(({ wall }) => wall)).toEqual([
      'Example: upper wall',
      'Example: lower wall',
      'Example: base',
    ]);
  });

  it('works out in every cell', async () => {
    const workbook = new MemoryWorkbook({ sheets: { Sheet1: [] }, evaluate });
    const plan = newEstimate(system, await FreeNames.of(workbook));
    expect(await workbook.filledCells(plan.blocks)).toEqual([]);
    await workbook.write(plan.blocks);
    const shown = workbook.blocks().flatMap(({ values }) => values.flat());
    expect(shown.filter((value) => typeof value === 'string' && value.startsWith('#'))).toEqual([]);
    expect((await readSource(workbook, plan.source)).walls).toHaveLength(4);
    const formats = plan.blocks.flatMap((block) => Object.keys(block.formats ?? {}));
    expect(formats).toEqual(['B3:B11', 'E15:BZ214']);
    const [headings = [], zone = []] = await workbook.readRange({ sheet: 'Estimate', address: 'A14:BZ15' });
    expect(headings.slice(3, 7)).toEqual(['Class', 'Cleaner', 'Washed afterwards', 'Most pre-wet passes']);
    const filled = zone.slice(6).filter((value) => value !== '');
    expect(filled.length).toBeGreaterThan(10);
    expect(filled.every((value) => typeof value === 'number')).toBe(true);
    const [water, cleaner] = await workbook.readRange({ sheet: 'Estimate', address: 'A3:C4' });
    expect([water?.[0], water?.[2], cleaner?.[2]]).toEqual([
      'Water',
      ...(system === 'US' ? ['gal', 'gal'] : ['L', 'L']),
    ]);
  });
});

describe('walls that are there', () => {
  const names = () => FreeNames.of(new MemoryWorkbook({ sheets: { Walls: [] } }));
  const match = guess({ wall: 0, material: 1, area: 2 });

  it('with our headings and factors need nothing written', async () => {
    const plan = planTable(
      {
        walls: { table: 'Mine' },
        headings: ['Wall', 'Material', 'Area'],
        match,
        factors: { table: 'Rates' },
        system: 'US',
      },
      await names(),
    );
    expect(plan.blocks).toEqual([]);
    expect(plan.source).toEqual({ walls: { table: 'Mine' }, factors: { table: 'Rates' } });
  });

  it('with other headings get a map, and units of their own a table of factors', async () => {
    const plan = planTable(
      {
        walls: { sheet: 'Walls', address: 'A3:C9' },
        headings: ['Mark', 'Material', 'sqm'],
        match,
        system: 'SI',
      },
      await names(),
    );
    const beginning = plan.blocks.map(({ table: name, rows }) => [
      name,
      name === 'Factors' ? rows.slice(1, 4).flatMap((row) => row.slice(0, 2)) : rows.slice(1, 3),
    ]);
    expect(beginning).toEqual([
      ['Factors', ['units', 'SI', 'Crew and shift', '', 'team.size', 'start']],
      [
        'Headings',
        [
          ['Wall', 'Mark'],
          ['Area', 'sqm'],
        ],
      ],
    ]);
    expect(plan.source).toEqual({
      walls: { sheet: 'Walls', address: 'A3:C9' },
      factors: { table: 'Factors' },
      headings: { table: 'Headings' },
    });
  });

  it('are read as a formula would read them, each problem with its cell', () => {
    const rows = [
      ['Mark', 'Brick', 'sf'],
      ['A', 'Red clay brick', 10],
      ['B', 'Red clay brick', -1],
      ['C', 'Gingerbread', 10],
    ];
    const test = readTest(rows, match, formRows('US').rows);
    if (test.is !== 'refused') throw new Error('These walls cannot be read.');
    const places = test.problems.map((problem) =>
      placeOfProblem(problem, { sheet: 'S', address: 'B5:D8' }, match),
    );
    expect(places).toEqual([
      { sheet: 'S', address: 'D7' },
      { sheet: 'S', address: 'C8' },
    ]);
    expect(readTest(rows.slice(0, 2), match, formRows('US').rows)).toEqual({
      is: 'read',
      walls: 1,
      zones: 1,
    });
  });
});

describe('formulas at a cell', () => {
  const source = { walls: { table: 'Walls' } };
  const at = { sheet: 'S', address: 'C4' };
  const job = { zones: ['North', 'South'], system: 'US' as const };

  it('stand in a row for each zone beside its name', () => {
    const wanted = { is: 'function', name: 'TAPE', zone: '', eachZone: true } as const;
    expect(formulasAt(wanted, at, source, job)).toEqual({
      sheet: 'S',
      address: 'C4',
      rows: [
        ['North', { formula: '=WASH.TAPE(Walls[#All],$C4)' }],
        ['South', { formula: '=WASH.TAPE(Walls[#All],$C5)' }],
      ],
    });
  });

  it('sum the job up with its area per labor-hour, and with price and price per area where there is one', () => {
    const labels = (priced: boolean) =>
      formulasAt({ is: 'summary' }, at, source, { ...job, priced }).rows.map(([label, formula, unit]) => [
        label,
        (formula as { formula: string }).formula,
        unit,
      ]);
    const area = ['Area per labor-hour', '=WASH.LABORHOURS(Walls[#All],,,"rate")', 'ft²/labor-h'];
    const price = [
      ['Price', '=WASH.BIDPRICE(Walls[#All])', 'money'],
      ['Price per area', '=WASH.BIDPRICE(Walls[#All],,,"rate")', 'per ft²'],
    ];
    expect(labels(true)).toEqual(expect.arrayContaining([area, ...price]));
    expect(labels(false)).toEqual(expect.arrayContaining([area]));
    expect(labels(false)).toHaveLength(labels(true).length - price.length);
  });

  it('stand alone for one zone, or for the job', () => {
    const one = { is: 'function', name: 'TAPE', zone: 'South', eachZone: false } as const;
    expect(formulasAt(one, at, source, job).rows).toEqual([[{ formula: '=WASH.TAPE(Walls[#All],"South")' }]]);
    expect(formulasAt({ ...one, zone: '' }, at, source, job).rows).toEqual([
      [{ formula: '=WASH.TAPE(Walls[#All])' }],
    ]);
  });

  it('have the format of their quantity, and a class its words', () => {
    const one = { is: 'function', name: 'BIDPRICE', zone: '', eachZone: false } as const;
    const formats = (wanted: Wanted) => formatsOf(wanted, formulasAt(wanted, at, source, job));
    expect(formats(one)).toEqual({ C4: '#,##0.00' });
    expect(formats({ ...one, name: 'TAPE', eachZone: true })).toEqual({ D4: '#,##0.0', D5: '#,##0.0' });
    expect(formats({ ...one, name: 'GOVERNOR' })).toEqual({});
    expect(formats({ ...one, name: 'SCHEDULE' })).toEqual({});
    expect(Object.keys(formats({ is: 'summary' }))).toHaveLength(9);
    const classes = { ...one, name: 'CLASS', eachZone: true } as const;
    expect(formats(classes)).toEqual({ D4: '0', D5: '0' });
    const block = formulasAt(classes, at, source, job);
    expect(block.rows[1]?.[2]).toEqual({
      formula:
        '=IF(D5="","",IF(D5=0,"clear water",IF(D5=1,"neutral detergent",IF(D5=2,"buffered mild acid",IF(D5=3,"buffered acid at full label strength","")))))',
    });
    expect(withoutWords(classes, block).rows.map((row) => row.length)).toEqual([2, 2]);
    expect(withoutWords(one, block)).toBe(block);
  });

  it('are of the functions that need walls alone', () => {
    const names = insertable.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(['WATER', 'SCHEDULE', 'CHECKS', 'BIDPRICE']));
    expect(names.filter((name) => ['TRACE', 'PATCH', 'FACTORS'].includes(name))).toEqual([]);
  });

  it('that fill rows say which cells they need, and which of them are filled', async () => {
    const ranges = { walls: exampleWalls('US'), factors: formRows('US').rows, headings: null };
    const wanted = { is: 'function', name: 'WALLROWS', zone: '', eachZone: false } as const;
    const spill = await spillOf(wanted, at, ranges);
    // A heading row and three walls, from row 4.
    expect(spill?.address).toMatch(/^C4:[A-Z]+7$/);
    expect(
      inTheWay({ sheet: 'S', address: 'C4:D5' }, [
        ['x', ''],
        [0, 'y'],
      ]),
    ).toEqual(['C5', 'D5']);
    expect(await spillOf({ ...wanted, name: 'TAPE' }, at, ranges)).toBeUndefined();
    expect(await spillOf({ ...wanted, zone: 'Nowhere' }, at, ranges)).toBeUndefined();
  });
});

function guess(places: Record<'wall' | 'material' | 'area', number>) {
  return new Map(Object.entries(places) as ['wall' | 'material' | 'area', number][]);
}
