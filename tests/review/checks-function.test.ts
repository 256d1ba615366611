import { describe, expect, it } from 'vitest';
import { factors as table } from '../../src/rules/factors';
import { lines, text } from '../properties/call';
import { mixedUs } from '../trace/jobs';

const { walls, factors } = mixedUs;

describe('CHECKS', () => {
  it('spills check, what, where, why, what to do and the document', () => {
    const spilled = lines('CHECKS', walls, null, factors);
    expect(spilled.length).toBeGreaterThan(10);
    for (const line of spilled) {
      expect(Object.keys(line)).toEqual(['Check', 'What', 'Where', 'Why', 'What to do', 'Source']);
      for (const cell of Object.values(line)) expect(cell).toMatch(/./);
    }
    const young = spilled.find((line) => line['Check'] === 'age' && text(line['What']).includes('5 days'));
    expect(young).toMatchObject({
      Where: 'Street front: A-2',
      Source: 'BIA Technical Note 20, Cleaning Brickwork',
    });
  });

  it('keeps to the zone that is asked for', () => {
    const zoned = lines('CHECKS', walls, 'Canopy', factors).map((line) => text(line['Where']));
    expect(zoned.filter((where) => !/^(Canopy|factor |material )/.test(where))).toEqual([]);
    expect(zoned).toContain('Canopy: D-2');
  });

  it('lists every override once, whatever the zone', () => {
    const overrides = lines('CHECKS', walls, 'Canopy', factors)
      .filter((line) => line['Check'] === 'override')
      .map((line) => text(line['Where']));
    // What only the user can know is theirs to state, and nothing to defend.
    const stated = new Set<string>(
      table.filter(({ sourceKind }) => sourceKind === 'yours to state').map(({ id }) => id),
    );
    const own = factors
      .map(([id]) => String(id))
      .filter((id) => id !== 'units' && !id.startsWith('material.') && !stated.has(id))
      .map((id) => `factor ${id}`);
    expect(overrides.filter((where) => where.startsWith('factor ')).sort()).toEqual(own.sort());
    expect(overrides.filter((where) => where.startsWith('material '))).toEqual([
      'material split-face-block',
      'material limestone',
      'material House brick',
    ]);
  });
});
