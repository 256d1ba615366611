import { describe, expect, it } from 'vitest';
import { lines, number, numberIn, text, type Line } from '../properties/call';

const HEAD = [
  'Wall',
  'Zone',
  'Material',
  'Area',
  'Height',
  'Mortar',
  'Residue',
  'Brushed',
  'Masked',
  'Suction',
  'Receives',
];
const PRICES = [
  ['price.labor', 50],
  ['price.cleaner.1', 10],
  ['price.cleaner.2', 20],
  ['price.cleaner.3', 32],
  ['price.film', 0.3],
  ['price.water', 0.05],
];
type Row = readonly unknown[];

const spilled = (rows: readonly Row[], zone: unknown = null): Line[] =>
  lines('ALTERNATES', [HEAD, ...rows], null, zone, PRICES);
const bid = (rows: readonly Row[], zone: unknown = null): number =>
  number('BIDPRICE', [HEAD, ...rows], zone, PRICES);
const names = (rows: readonly Row[], zone: unknown = null): string[] =>
  spilled(rows, zone)
    .slice(1, -1)
    .map((line) => text(line['Alternate']));

/** Expects the line of a choice to be what the table comes to with its cells edited by hand. */
function expectEdited(rows: readonly Row[], name: string, after: readonly Row[]): Line {
  const line = spilled(rows).find((each) => each['Alternate'] === name);
  if (line === undefined) throw new Error(`There is no choice ${name}: ${names(rows).join(', ')}.`);
  expect(numberIn(line, 'Add or deduct')).toBeCloseTo(bid(after) - bid(rows), 6);
  return line;
}

/** Rows with a cell changed in those whose label is among the labels. */
function withCell(rows: readonly Row[], labels: readonly string[], heading: string, value: unknown): Row[] {
  return rows.map((row) => (labels.includes(String(row[0])) ? row.with(HEAD.indexOf(heading), value) : row));
}

//            Wall  Zone     Material           Area H   Mortar Residue  Brushed Masked Suction Receives
const brick: Row = ['B', 'Front', 'Red clay brick', 800, 20, 'N', '', '', '', '', ''];
const seen: Row = ['S', 'Front', 'Red clay brick', 200, 10, 'N', 'heavy', '', '', '', ''];
const limestone: Row = ['L', 'Front', 'Limestone', 60, 3, 'O', 'light', '', '', 40, ''];
const glass: Row = ['G', 'Front', 'Coated glass', 90, 9, '', '', '', 'yes', '', ''];

describe('brush down daily', () => {
  it('applies to masonry whose residue nobody has seen, and carries its own labor', () => {
    const rows = [brick, seen, glass];
    const line = expectEdited(rows, 'Brush down daily', withCell(rows, ['B'], 'Brushed', 'priced'));
    expect(line['What']).toBe('Brushed priced: B');
    expect(line['Note']).toContain('rate.brush');
    // Brushing done for nothing would save more: 800 ft2 at 1000 ft2 a labor-hour net, a 50-minute hour, and set-up of
    // 0.75 of 8 h, at 50 a labor-hour.
    const free = bid(withCell(rows, ['B'], 'Brushed', 'yes')) - bid(rows);
    const brushing = (((800 / 1000) * 60) / 50) * (8 / (8 - 0.75)) * 50;
    expect(numberIn(line, 'Add or deduct') - free).toBeCloseTo(brushing, 1);
  });

  it('does not apply where it is done, or where residue was seen', () => {
    expect(names([seen])).not.toContain('Brush down daily');
    expect(names([brick.with(7, 'yes')])).not.toContain('Brush down daily');
    expect(names([brick.with(8, 'only')])).not.toContain('Brush down daily');
  });
});

describe('another mortar', () => {
  it('is one type weaker or stronger for each mortar laid, and is the engineer’s to choose', () => {
    const rows = [brick, limestone, brick.with(0, 'D').with(5, ''), brick.with(0, 'M').with(5, 'M')];
    const mortars = names(rows).filter((name) => name.startsWith('Mortar'));
    // A wall that states none is of Type N. There is none stronger than M and none weaker than O.
    expect(mortars).toEqual([
      'Mortar Type S for Type M',
      'Mortar Type O for Type N',
      'Mortar Type S for Type N',
      'Mortar Type N for Type O',
    ]);
    const line = expectEdited(rows, 'Mortar Type S for Type N', withCell(rows, ['B', 'D'], 'Mortar', 'S'));
    expect(line['Note']).toBe('The engineer and the code choose the mortar.');
    expect(line['What']).toBe('Mortar S: B, D');
  });
});

describe('another material', () => {
  it('is the next tolerant one of its group for the material that alone holds a zone down', () => {
    const rows = [brick, limestone];
    // Of the stones limestone allows class 1, and granite class 2. What was measured on limestone does not hold for it.
    const edited = withCell(withCell(rows, ['L'], 'Material', 'Granite'), ['L'], 'Suction', '');
    const line = expectEdited(rows, 'Granite for Limestone in Front', edited);
    expect(line['What']).toBe('Material Granite: L; Suction blank: L');
  });

  it('is not offered where two materials hold the zone down, or none does', () => {
    const two = names([brick, limestone, limestone.with(0, 'X').with(2, 'Ground-face block')]);
    expect(two.filter((name) => / for (Limestone|Ground)/.test(name))).toEqual([]);
    expect(names([brick]).filter((name) => name.endsWith('in Front'))).toEqual([]);
  });
});

describe('masking', () => {
  it('each masked masonry row is washed with its zone', () => {
    const rows = [brick, limestone.with(8, 'yes'), glass];
    expectEdited(rows, 'Wash L with its zone', withCell(rows, ['L'], 'Masked', 'no'));
    expect(names(rows)).not.toContain('Wash G with its zone');
    const only = [brick, limestone.with(8, 'only')];
    const line = expectEdited(only, 'Wash L with its zone', withCell(only, ['L'], 'Masked', 'no'));
    expect(line['Note']).toBe('Washes 60 ft² more than the base bid.');
  });

  it('each row that governs is masked, where it can be and another is left', () => {
    const rows = [brick, limestone];
    expectEdited(rows, 'Mask L', withCell(rows, ['L'], 'Masked', 'yes'));
    expect(names(rows)).not.toContain('Mask B');
    expect(names([brick, limestone.with(8, 'never')])).not.toContain('Mask L');
    expect(names([limestone])).not.toContain('Mask L');
  });
});

describe('zones kept apart', () => {
  const upper = brick.with(1, 'Upper');
  const lower = limestone.with(1, 'Lower').with(10, 'Upper');

  it('the rinse of one is kept off the other', () => {
    const rows = [upper, lower];
    const line = expectEdited(rows, 'Rinse of Upper kept off Lower', withCell(rows, ['L'], 'Receives', ''));
    expect(line['Class and governor after']).toContain('Upper: class 2');
  });

  it('and what governs from below is masked or of another material', () => {
    const rows = [upper, lower, seen.with(1, 'Lower')];
    expect(names(rows)).toEqual(expect.arrayContaining(['Mask L', 'Granite for Limestone in Upper']));
    expectEdited(rows, 'Mask L', withCell(rows, ['L'], 'Masked', 'yes'));
  });

  it('a zone asked for alone has the choices that touch it', () => {
    const rows = [upper, lower, seen.with(1, 'Yard').with(5, 'M')];
    expect(names(rows, 'Yard')).toEqual(['Mortar Type S for Type M']);
    expect(names(rows, 'Lower')).toContain('Rinse of Upper kept off Lower');
    const [base] = spilled(rows, 'Yard');
    expect(numberIn(base, 'Price')).toBeCloseTo(bid(rows, 'Yard'), 9);
  });
});
