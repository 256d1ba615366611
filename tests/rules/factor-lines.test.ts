import { describe, expect, it } from 'vitest';
import { factorGroups } from '../../src/rules/factor-groups';
import { classLine, factorLines } from '../../src/rules/factor-lines';
import { factors } from '../../src/rules/factors';
import { readFactors } from '../../src/rules/read-factors';
import { refusal } from '../functions/call';

const lines = (system: 'US' | 'SI') => factorLines(system).flatMap((group) => group.lines);
const line = (id: string, system: 'US' | 'SI' = 'US') => lines(system).find((each) => each.id === id);

describe('the lines of a factor form', () => {
  it('have every factor once, and the choice of class', () => {
    const ids = lines('US').map(({ id }) => id);
    expect([...ids].sort()).toEqual([...factors.map(({ id }) => id as string), classLine.id].sort());
    expect(factorLines('US').map(({ title }) => title)).toEqual(Object.values(factorGroups));
    for (const { lines: ofGroup, title } of factorLines('US'))
      expect(ofGroup.length, title).toBeGreaterThan(1);
  });

  it('state unit, starting value and ends in the units in force', () => {
    expect(line('team.size')).toMatchObject({ unit: 'people', start: 2, least: 1, most: 20 });
    // 6 in. are 152.4 mm, 120 in. 3048; 68 degF are 20 degC, -40 is -40 in both, 200 degF are 93.3333 degC.
    expect(line('mask.lap', 'SI')).toMatchObject({ unit: 'mm', start: 152.4, least: 0, most: 3048 });
    expect(line('weather.air', 'SI')).toMatchObject({ unit: '°C', start: 20, least: -40, most: 93.3333 });
    expect(line('rate.apply')).toMatchObject({ start: 10, least: 'above 0', most: 1000 });
    expect(line('access.kind')).toMatchObject({ start: 'ground', least: '', most: '' });
    expect(line('price.labor')).toMatchObject({ unit: 'money/labor-h', start: '', least: 0 });
    expect(line('cleaner.class')).toMatchObject({ start: 'by need', most: 3 });
  });

  it.each(['US', 'SI'] as const)('give starting values in %s that change nothing', (system) => {
    const given = lines(system).map(({ id, start }) => [id, start]);
    const inForce = readFactors([
      ['units', system],
      ...given.filter(([id]) => !/^price\.(labor|crew)$/.test(String(id))),
    ]);
    expect(factors.filter(({ id }) => inForce.changed(id)).map(({ id }) => id)).toEqual([]);
  });
});

describe('titles of groups', () => {
  it('are left alone, however the host hands a blank over, and need no value', () => {
    for (const blank of ['', null, 0])
      expect(
        readFactors([
          ['Crew and shift', blank],
          ['teams', 3],
          ['crew and Shift', blank],
        ]).value('teams'),
      ).toBe(3);
    expect(refusal(() => readFactors([['Crew and shift', 5]])).message).toContain(
      'the factor "Crew and shift"',
    );
  });
});
