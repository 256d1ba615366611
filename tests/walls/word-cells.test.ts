import { describe, expect, it } from 'vitest';
import { call, number, refusal, spill } from '../functions/call';

const header = ['Wall', 'Material', 'Area', 'Mortar', 'Residue', 'Brushed', 'Masked', 'Access'];
const row = (cells: Record<string, unknown>): unknown[] =>
  header.map((name) =>
    name in cells ? cells[name] : ({ Wall: 'South', Material: 'Limestone', Area: 400 }[name] ?? ''),
  );
const hours = (cells: Record<string, unknown>): number => number('CREWHOURS', [header, row(cells)]);
const refused = (cells: Record<string, unknown>): string =>
  refusal(() => call('WATER', [header, row(cells)])).message;

describe('material', () => {
  it.each(['Red clay brick', 'red clay brick', ' RED  CLAY BRICK ', 'red-clay-brick', 'Red\u00a0clay brick'])(
    'is known as "%s"',
    (Material) => {
      expect(call('GOVERNOR', [header, row({ Material })])).toBe('Red clay brick');
    },
  );

  it.each(['Red clay brick', 'Light clay brick', 'Ground-face block', 'Coated glass'])(
    'has a row for %s',
    (name) => {
      expect(call('GOVERNOR', [header, row({ Material: name })])).toBe(name);
    },
  );

  it.each([
    ['Lime stone band', 'Limestone'],
    ['Groundface block', 'Ground-face block'],
  ])('"%s" is a trade word for %s', (Material, known) => {
    expect(call('GOVERNOR', [header, row({ Material })])).toBe(known);
  });

  it.each([
    ['Redd clay brick', 'Red clay brick'],
    ['limestne', 'Limestone'],
    ['coated glas', 'Coated glass'],
    ['Groundfce block', 'Ground-face block'],
  ])('"%s" is refused with %s offered first, never taken', (Material, offered) => {
    expect(refused({ Material })).toMatch(
      new RegExp(
        `^Row 2 \\(South\\), column Material: "${Material}" cannot be used\\. Accepted: a name or code of the material table\\. Did you mean ${offered}, [A-Z][a-z -]+, [A-Z][a-z -]+\\?$`,
      ),
    );
  });

  it.each<[unknown, string]>([
    ['', 'a blank cell'],
    [0, '0'],
    [5, '5'],
    ['5', '"5" (a number stored as text)'],
    [true, 'TRUE'],
    ['#N/A', 'the error #N/A'],
  ])('%j is refused', (Material, seen) => {
    expect(refused({ Material })).toBe(
      `Row 2 (South), column Material: ${seen} cannot be used. Accepted: a name or code of the material table.`,
    );
  });
});

describe('words of a choice', () => {
  it.each([
    ['Mortar', 'K', '"K"', 'M, S, N, O, or blank'],
    ['Mortar', 'Type', '"Type"', 'M, S, N, O, or blank'],
    ['Mortar', 3, '3', 'M, S, N, O, or blank'],
    ['Mortar', true, 'TRUE', 'M, S, N, O, or blank'],
    ['Residue', 'lots', '"lots"', 'light, moderate, heavy, or blank'],
    ['Residue', '#REF!', 'the error #REF!', 'light, moderate, heavy, or blank'],
    ['Brushed', 'sometimes', '"sometimes"', 'yes, no, priced, or blank'],
    ['Masked', 'maybe', '"maybe"', 'yes, no, only, never, or blank'],
    ['Masked', 1, '1', 'yes, no, only, never, or blank'],
    ['Access', 'crane', '"crane"', 'ground, scaffold, lift, ladder, suspended, or blank'],
  ])('%s %j is refused', (name, value, seen, accepted) => {
    expect(refused({ [name]: value })).toBe(
      `Row 2 (South), column ${name}: ${seen} cannot be used. Accepted: ${accepted}.`,
    );
  });

  it.each([
    ['Mortar', 'S', ['s', ' S ', 'Type S', 'type s']],
    ['Residue', 'heavy', ['Heavy', 'HEAVY ']],
    ['Brushed', 'yes', ['Yes', 'YES', true]],
    ['Masked', 'yes', ['Yes', true]],
    ['Masked', 'no', ['No', false, '', null, 0]],
  ])('%s %s may be typed as %j', (name, word, others) => {
    const plain = hours({ [name]: word });
    for (const other of others) expect(hours({ [name]: other }), String(other)).toBe(plain);
  });

  it('mean something: each changes the estimate', () => {
    const bare = hours({});
    for (const cells of [{ Mortar: 'S' }, { Residue: 'heavy' }, { Brushed: 'yes' }, { Masked: 'yes' }])
      expect(hours(cells)).not.toBeCloseTo(bare, 3);
  });

  it('left blank mean Type N, not masked', () => {
    expect(spill('SCHEDULE', [header, row({})])).toEqual(
      spill('SCHEDULE', [header, row({ Mortar: 'N', Masked: 'no' })]),
    );
  });
});
