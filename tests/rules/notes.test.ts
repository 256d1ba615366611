import { describe, expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { call, column, spill } from '../functions/call';

const walls = [
  ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Residue', 'Brushed', 'Age'],
  ['A', 'front', 'Red clay brick', 500, 12, 'light', 'yes', 30],
];
const LABEL = 'label of 4 March, page 2';
const noted = [
  ['Factor', 'Value', 'Note'],
  ['dwell.least', 2, LABEL],
  ['scrub.full', 20, ''],
  ['cleaner.class', 1, 'asked for by the architect'],
  ['Material.Limestone.Suction', 9, 'tested on 3 units'],
];
const bare = noted.map((row) => row.slice(0, 2));

describe('the note beside a factor', () => {
  it('is read from the third column, whatever the spelling of the id', () => {
    const { note } = readFactors(noted);
    expect(note('dwell.least')).toBe(LABEL);
    expect(note('material.limestone.suction')).toBe('tested on 3 units');
    expect(note('scrub.full')).toBe('');
    expect(note('rate.apply')).toBe('');
  });

  it.each([[null], [0], ['#N/A'], [undefined]])('is none where its cell is %s', (cell) => {
    expect(readFactors([['scrub.full', 20, cell]]).note('scrub.full')).toBe('');
  });

  it('changes no value', () => {
    expect(call('LABORHOURS', walls, null, noted)).toBe(call('LABORHOURS', walls, null, bare));
  });

  it('is the source in FACTORS; a value without one is the table of factors', () => {
    const spilled = spill('FACTORS', noted);
    const at = (id: string): unknown => column(spilled, 'Source')[column(spilled, 'Factor').indexOf(id)];
    expect(at('dwell.least')).toBe(LABEL);
    expect(at('cleaner.class')).toBe('asked for by the architect');
    expect(at('scrub.full')).not.toBe(at('dwell.least'));
    expect(at('scrub.full')).not.toBe('');
  });

  it('is the source of the line in TRACE, still marked override', () => {
    const spilled = spill('TRACE', 'labor-hours', walls, null, noted);
    const place = column(spilled, 'Symbol').indexOf('dwell_least');
    expect(column(spilled, 'Source')[place]).toBe(LABEL);
    expect(column(spilled, 'Kind of source')[place]).toBe('override');
  });

  it('ends the nagging in CHECKS, of factor, class and material', () => {
    const overridden = (factors: unknown): unknown[] => {
      const spilled = spill('CHECKS', walls, null, factors);
      const places = column(spilled, 'Where');
      return column(spilled, 'Check').flatMap((check, row) => (check === 'override' ? [places[row]] : []));
    };
    expect(overridden(bare)).toEqual([
      'factor scrub.full',
      'factor dwell.least',
      'material limestone',
      'factor cleaner.class',
    ]);
    expect(overridden(noted)).toEqual(['factor scrub.full']);
  });
});
