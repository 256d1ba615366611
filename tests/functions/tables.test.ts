import { describe, expect, it } from 'vitest';
import { call, column, refusal, spill } from './call';

describe('MATERIALS', () => {
  it('shows suction and pressure in the units of the user', () => {
    // 20 g on 30 in2, 0.0193548 m2, is 0.02 / 0.0193548 kg/m2, 800 psi is 800 x 6.894757 kPa.
    const us = spill('MATERIALS');
    const si = spill('MATERIALS', [['units', 'SI']]);
    const row = column(us, 'Material').indexOf('Red clay brick');
    expect(us[0]).toEqual(expect.arrayContaining(['Suction (g/30in²)', 'Pressure (psi)']));
    expect(si[0]).toEqual(expect.arrayContaining(['Suction (kg/m²)', 'Pressure (kPa)']));
    expect(column(us, 'Suction')[row]).toBeCloseTo(20, 9);
    expect(column(us, 'Pressure')[row]).toBeCloseTo(800, 9);
    expect(column(si, 'Suction')[row]).toBeCloseTo(0.02 / 0.0193548, 9);
    expect(column(si, 'Pressure')[row]).toBeCloseTo(5515.806, 3);
  });

  it('marks what the user overrides, and adds what is their own', () => {
    const spilled = spill('MATERIALS', [
      ['material.limestone.suction', 9],
      ['material.limestone.ceiling', 0],
      ['material.slate.ceiling', 1],
      ['material.slate.suction', 2],
      ['material.slate.pressure', 300],
    ]);
    const names = column(spilled, 'Material');
    const limestone = names.indexOf('Limestone');
    expect(column(spilled, 'Override')[limestone]).toBe('ceiling, suction');
    expect(column(spilled, 'Ceiling')[limestone]).toBe(0);
    expect(column(spilled, 'Suction')[limestone]).toBeCloseTo(9, 9);
    expect(names.at(-1)).toBe('slate');
    expect(column(spilled, 'Kind of source').at(-1)).toBe('override');
    expect(column(spilled, 'Override').filter((cell) => cell !== '')).toHaveLength(2);
  });

  it('refuses factors that cannot be read', () => {
    expect(refusal(() => call('MATERIALS', [['crw', 2]])).message).toContain(
      'the factor "crw" cannot be used',
    );
  });
});

describe('SOURCES', () => {
  it('lists every source that FACTORS names', () => {
    const documents = new Set(column(spill('SOURCES'), 'Document'));
    for (const source of column(spill('FACTORS'), 'Source').filter((cell) => cell !== ''))
      expect(documents).toContain(source);
  });

  it('says where each was read, as far as it was', () => {
    const spilled = spill('SOURCES');
    const row = column(spilled, 'Source').indexOf('ufgs-04900');
    expect(column(spilled, 'Address')[row]).toBe(
      'https://ufgscriteriadocreport.tpub.com/04900/049000014.htm',
    );
    expect(column(spilled, 'Address')[column(spilled, 'Source').indexOf('practice')]).toBe('');
  });
});
