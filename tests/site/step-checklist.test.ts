import { describe, expect, it } from 'vitest';
import { siteSources } from '../../src/rules/site-sources';
import { stepChecklist } from '../../src/site/step-checklist';
import { BRICK_OVER_MASKED_BASE, estimated } from './job';

function checklist(rows: unknown[][], factors: unknown[][] = []) {
  const job = estimated(rows, factors);
  const [zone] = job.zones;
  if (!zone) throw new Error('no zone');
  const list = stepChecklist(zone, job.zones, job.factors);
  const step = (id: string) => list.steps.find((candidate) => candidate.id === id);
  const fact = (id: string, label: string) =>
    step(id)?.facts.find((candidate) => candidate.label === label)?.value;
  return { ...list, ids: list.steps.map(({ id }) => id), step, fact };
}

const wall = (name: string, material: string, rest: unknown[] = [10, 'no', '']) => [
  ...[name, 'Z', 1, material, 400, 10, 0, 0, 0, 'N', 'moderate', ...rest],
];

describe('the steps of a zone under cleaner', () => {
  const list = checklist(BRICK_OVER_MASKED_BASE);

  it('stand in working order, the gates first', () => {
    expect(list.ids).toEqual([
      'age',
      'sample',
      'protection',
      'scrape',
      'pre-wet',
      'mix',
      'apply',
      'dwell',
      'rinse',
      'clear',
      'look',
    ]);
    expect(list.steps.filter(({ decidedOn }) => decidedOn).map(({ id }) => id)).toEqual([
      'age',
      'sample',
      'protection',
    ]);
    expect(list.notice).toBe('');
    expect(list.walls).toEqual(['S-1', 'S-2']);
  });

  it('carry their numbers', () => {
    expect(list.fact('age', 'Youngest wall here')).toBe('10 days: S-1');
    expect(list.fact('sample', 'Least area of a sample')).toBe('20 ft²');
    // 100 + 0.5 * 120 + 3 * 4 = 172; 200 + 0.5 * 2 * (200/4 + 4) = 254.
    expect(list.fact('protection', 'Masking')).toBe('426 ft²');
    // 426 * 1.15; (120 + 108) * 1.1; (160 + 254) / 150 + 3 * 6 / 60.
    expect(list.fact('protection', 'Film')).toBe('490 ft²');
    expect(list.fact('protection', 'Tape')).toBe('251 ft');
    expect(list.fact('protection', 'Time')).toBe('3.06 crew-hours');
    expect(list.fact('scrape', 'Time')).toBe('4.5 crew-hours');
    // S = 1.0333; ((5 - 0.9365) / (2 * 0.96774))^2 = 4.41 min; 4.41 / 2 -> 3 passes.
    expect(list.fact('pre-wet', 'Wet enough after')).toBe('4.41 min');
    expect(list.fact('pre-wet', 'Passes')).toBe('3');
    // 900 / 100 = 9 gal of mix, of which 1 part in 9; a patch of 40 ft2 takes 0.4 gal.
    expect(list.fact('mix', 'Parts of water to 1 of concentrate')).toBe('8');
    expect(list.fact('mix', 'Mix for one patch')).toBe('0.4 gal');
    expect(list.fact('mix', 'Concentrate, whole zone')).toBe('1 gal');
    expect(list.fact('mix', 'Water in the mix, whole zone')).toBe('8 gal');
    // min(5 * 8, 2 / (1/8 - 1/10)) = 40; 900 / 40 -> 23; 40 / 10 = 4 min; wait max(0, 3 - 4).
    expect(list.fact('apply', 'Patch, at most')).toBe('40 ft²');
    expect(list.fact('apply', 'Patches in the zone')).toBe('23');
    expect(list.fact('apply', 'One patch is covered in')).toBe('4 min');
    expect(list.fact('dwell', 'Wait after the last stroke')).toBe('0 min');
    expect(list.fact('dwell', 'Start to rinse, on the clock')).toBe('4 min');
    // 0.1 mm of water at 0.3115 kg/m2/h.
    expect(list.fact('dwell', 'Dry in this weather after')).toBe('19.3 min');
    // 2 * 12 * tan 20 degrees.
    expect(list.fact('rinse', 'Width of the fan on the wall, at most')).toBe('8.74 in');
    expect(list.fact('rinse', 'Flow')).toBe('3.16 gal/min');
    expect(list.fact('rinse', 'Level 1')).toBe('S-1');
    // 3 passes of 1 L/m2 on 900 ft2, 66.3 gal; 9 gal of mix; 900 * 3.1623 / 8 = 355.8 gal of rinse: 431 gal.
    for (const id of ['protection', 'rinse', 'clear'])
      expect(list.fact(id, 'Water to collect')).toBe('431 gal');
    // 1 gal of concentrate, 3.785 L * 1.02 kg/L * 5 % * 84.007 / 36.461 = 0.4448 kg.
    for (const id of ['protection', 'clear']) {
      expect(list.fact(id, 'Sodium bicarbonate, at most')).toBe('0.981 lb');
    }
  });

  it('carry the weather that they are reckoned for, and what is assumed of it', () => {
    const given = checklist(BRICK_OVER_MASKED_BASE, [
      ['weather.air', 50],
      ['weather.wind', 12],
    ]);
    expect(given.fact('pre-wet', 'Air')).toBe('50 °F');
    expect(given.fact('pre-wet', 'Coldest to wash in')).toBe('40 °F');
    const ofDwell = ['Air', 'Face', 'Relative humidity', 'Wind'].map((label) =>
      given.step('dwell')?.facts.find((fact) => fact.label === label),
    );
    expect(ofDwell.map((fact) => [fact?.value, fact?.kind])).toEqual([
      ['50 °F', 'override'],
      ['68 °F', 'assumption'],
      ['50 %', 'assumption'],
      ['12 mph', 'override'],
    ]);
  });

  it('warn of what may not meet the cleaner', () => {
    expect(list.step('protection')?.todo.join(' ')).toContain('Limestone may not meet this cleaner (S-2)');
  });

  it('have a source for each step and each number', () => {
    for (const { id, source, kind, facts } of list.steps) {
      expect([id, kind]).toEqual([id, siteSources[source].kind]);
      for (const fact of facts) expect(Object.keys(siteSources)).toContain(fact.source);
    }
  });
});

describe('what changes the steps', () => {
  it('clear water: no cleaner, no dwell, no patch', () => {
    const list = checklist([wall('A', 'Marble')]);
    expect(list.ids).toEqual(['age', 'sample', 'protection', 'scrape', 'scrub', 'rinse', 'clear', 'look']);
    expect(list.notice).toContain('clear water');
    expect(list.fact('rinse', 'Coldest to wash in')).toBe('40 °F');
    expect(list.fact('clear', 'Sodium bicarbonate, at most')).toBeUndefined();
    // Two classes short: 400 / 60 * 2.
    expect(list.fact('scrub', 'Time')).toBe('13.3 crew-hours');
  });

  it('every wall masked: says so, and washes nothing', () => {
    const list = checklist([wall('A', 'Marble', [10, 'yes', ''])]);
    expect(list.ids).toEqual(['protection', 'clear']);
    expect(list.notice).toContain('Nothing is washed here');
  });

  it('a milder cleaner than the residue needs: scrubbing', () => {
    const list = checklist([wall('A', 'Limestone'), wall('B', 'Red clay brick')]);
    expect(list.fact('scrub', 'Held down by')).toBe('Limestone');
    // 800 / 60 * 1.
    expect(list.fact('scrub', 'Time')).toBe('13.3 crew-hours');
  });

  it('a sensitive wall limits the pressure of the whole zone', () => {
    const list = checklist([wall('A', 'Sand-faced brick'), wall('B', 'Red clay brick')]);
    expect(list.fact('rinse', 'Pressure, at most')).toBe('200 psi, Sand-faced brick');
    expect(list.fact('rinse', 'Pressure')).toBeUndefined();
    expect(list.step('rinse')?.todo.join(' ')).toContain('Turn the pressure down');
    const own = checklist([wall('A', 'Sand-faced brick')], [['material.sand-faced-brick.pressure', 300]]);
    expect(own.step('rinse')?.facts[0]).toMatchObject({
      value: '300 psi, Sand-faced brick',
      kind: 'override',
    });
  });

  it('a nozzle too near is told at the rinse', () => {
    const list = checklist([wall('A', 'Red clay brick')], [['nozzle.distance', 4]]);
    expect(list.step('rinse')?.todo.join(' ')).toContain(
      'the workbook has set 4 in off, less than the least',
    );
  });

  it('SI: the same work in other units', () => {
    const list = checklist([wall('A', 'Red clay brick')], [['units', 'SI']]);
    // 40 ft2; 400 m2 / 3.716 m2.
    expect(list.fact('apply', 'Patch, at most')).toBe('3.72 m²');
    expect(list.fact('apply', 'Patches in the zone')).toBe('108');
  });

  it('a label of its own is an override', () => {
    const list = checklist([wall('A', 'Red clay brick')], [['dwell.most', 4]]);
    expect(list.step('dwell')?.facts.find(({ label }) => label === 'Most dwell')).toMatchObject({
      value: '4 min',
      kind: 'override',
      source: 'factors',
    });
  });
});

describe('what the workbook itself holds back', () => {
  it('a wall that is too young', () => {
    const { step } = checklist([wall('A', 'Red clay brick', [3, 'no', ''])]);
    expect(step('age')?.hold).toBe(
      'Too young: A. Wait until they are 7 days old, then put the new age into the column Age.',
    );
  });

  it('applying in cold or hot weather, never the rinse: cleaner on the wall is always rinsed', () => {
    const holds = (factors: unknown[][], material = 'Red clay brick') =>
      checklist([wall('A', material)], factors).steps.flatMap(({ id, hold }) =>
        hold === undefined ? [] : [[id, hold]],
      );
    const cold =
      'Too cold: face at 39 °F. Wait until it is above 40 °F and stays so until the wall is dry, then put the new weather into the factors.';
    expect(holds([['weather.surface', 39]])).toEqual([
      ['mix', cold],
      ['apply', cold],
    ]);
    const hot =
      'Too hot: face at 95 °F. Wait until it is below 90 °F, then put the new weather into the factors.';
    expect(holds([['weather.surface', 95]])).toEqual([
      ['mix', hot],
      ['apply', hot],
    ]);
    // Clear water leaves nothing on the wall that has to be rinsed off, and a wet wall may freeze.
    expect(holds([['weather.surface', 39]], 'Marble')).toEqual([['rinse', cold]]);
    expect(holds([['weather.surface', 95]], 'Marble')).toEqual([]);
  });

  it('spraying in wind, but not the brush', () => {
    const { step } = checklist([wall('A', 'Red clay brick')], [['weather.wind', 14]]);
    expect(step('apply')?.todo.join(' ')).toContain('Do not spray: wind of 14 mph, more than 10 mph.');
    expect(step('apply')?.hold).toBeUndefined();
  });

  it('a cleaner that dries before its least dwell', () => {
    const { step, fact } = checklist(
      [wall('A', 'Red clay brick')],
      [
        ['weather.surface', 140],
        ['weather.wind', 40],
      ],
    );
    expect(step('apply')?.hold).toContain('No contact window');
    expect(step('dwell')?.hold).toContain('No contact window');
    expect(fact('apply', 'Patch, at most')).toBeUndefined();
  });

  it('an age that is not stated is for a person to vouch for', () => {
    const { step, fact } = checklist([wall('A', 'Red clay brick', ['', 'no', ''])]);
    expect(fact('age', 'Age not stated')).toBe('A');
    expect(step('age')?.hold).toBeUndefined();
  });
});
