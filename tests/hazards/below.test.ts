import { describe, expect, it } from 'vitest';
import { weakerBelow, weakerMasked } from '../../src/hazards/below';
import { checked, wall, type Row } from '../review/checked';

function labels(rows: readonly Row[]) {
  const { zones } = checked(rows);
  const [above] = zones;
  if (!above) throw new Error('no zone');
  return {
    below: weakerBelow(above, zones).map(({ wall: label }) => label),
    masked: weakerMasked(above).map(({ wall: label }) => label),
  };
}

describe('what lies below', () => {
  const top = wall('A', { Residue: 'heavy' });
  const base = (differs: Row) => wall('B', { Zone: 'Base', Material: 'Limestone', ...differs });

  it('is what stands on a lower level or receives the rinse, washed or masked', () => {
    expect(labels([top, base({ Level: 2 })]).below).toEqual(['B']);
    expect(labels([top, base({ Level: 2, Masked: 'yes' })]).below).toEqual(['B']);
    expect(labels([top, base({ Level: '', Masked: 'yes', Receives: 'south' })]).below).toEqual(['B']);
    expect(labels([top, base({ Level: 1 })]).below).toEqual([]);
    expect(labels([top, base({ Level: '' })]).below).toEqual([]);
  });

  it('is nothing that may meet the class, and nothing below walls that stay masked', () => {
    expect(labels([top, base({ Level: 2, Material: 'Red clay brick' })]).below).toEqual([]);
    expect(labels([{ ...top, Masked: 'only' }, base({ Level: 2 })]).below).toEqual([]);
  });

  it('is wetted too by masked masonry above it that is washed afterwards', () => {
    expect(labels([{ ...top, Masked: 'yes' }, base({ Level: 2 })]).below).toEqual(['B']);
  });

  it('in the same zone is what is masked', () => {
    const rows = [top, base({ Zone: 'South', Level: 2, Masked: 'yes' })];
    expect(labels(rows)).toEqual({ below: ['B'], masked: ['B'] });
  });
});
