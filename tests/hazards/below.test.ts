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

  it('in another zone is what receives the rinse, at once or by way of a third, washed or masked', () => {
    const granite = base({ Zone: 'Mid', Material: 'Granite', Receives: 'South' });
    expect(labels([top, base({ Level: 2, Receives: 'south', Masked: 'yes' })]).below).toEqual(['B']);
    expect(labels([top, base({ Level: '', Masked: 'yes', Receives: 'south' })]).below).toEqual(['B']);
    expect(labels([top, { ...granite, Wall: 'M' }, base({ Masked: 'yes', Receives: 'Mid' })]).below).toEqual([
      'B',
    ]);
  });

  it('is nothing in another zone that does not receive the rinse, however low its level', () => {
    expect(labels([top, base({ Level: 2 })]).below).toEqual([]);
    expect(labels([top, base({ Level: 2, Masked: 'yes' })]).below).toEqual([]);
    const aside = wall('C', { Zone: 'Mid' });
    expect(labels([top, base({ Level: 2, Masked: 'yes', Receives: 'Mid' }), aside]).below).toEqual([]);
  });

  it('is nothing that may meet the class, and nothing below walls that stay masked', () => {
    const receives = { Receives: 'South' };
    expect(labels([top, base({ ...receives, Material: 'Red clay brick' })]).below).toEqual([]);
    expect(labels([{ ...top, Masked: 'only' }, base(receives)]).below).toEqual([]);
  });

  it('is wetted too by masked masonry above it that is washed afterwards', () => {
    expect(labels([{ ...top, Masked: 'yes' }, base({ Receives: 'South', Masked: 'yes' })]).below).toEqual([
      'B',
    ]);
  });

  it('in the same zone is what is masked', () => {
    const rows = [top, base({ Zone: 'South', Level: 2, Masked: 'yes' })];
    expect(labels(rows)).toEqual({ below: ['B'], masked: ['B'] });
    const higher = [{ ...top, Level: 2 }, base({ Zone: 'South', Level: 1, Masked: 'yes' })];
    expect(labels(higher)).toEqual({ below: [], masked: ['B'] });
  });
});
