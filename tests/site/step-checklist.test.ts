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
      'sample-wash',
      'sample',
      'protection',
      'scrape',
      'pre-wet',
      'mix',
      'apply',
      'scrub',
      'dwell',
      'rinse',
      'later-1',
      'clear',
      'look',
    ]);
    expect(list.steps.filter(({ decidedOn }) => decidedOn).map(({ id }) => id)).toEqual([
      'age',
      'sample',
      'protection',
      'look',
    ]);
    expect(list.notice).toBe('');
    expect(list.walls).toEqual(['S-1', 'S-2']);
  });

  it('speak of masking and of fixtures only where there are some', () => {
    const plain = checklist([wall('A', 'Red clay brick')]);
    const labels = (of: typeof plain, id: string) => of.step(id)?.facts.map(({ label }) => label);
    for (const label of ['Masking', 'Film', 'Tape', 'Time'])
      expect(labels(plain, 'protection')).not.toContain(label);
    expect(labels(plain, 'clear')).not.toContain('Time to unmask');
    const energize = 'Have the licensed person re-energize the fixtures.';
    expect(plain.step('clear')?.todo).not.toContain(energize);
    expect(list.step('clear')?.todo).toContain(energize);
    expect(labels(list, 'clear')).toContain('Time to unmask');
  });

  it('carry their numbers', () => {
    expect(list.fact('age', 'Youngest wall here')).toBe('10 days: S-1, S-2');
    expect(list.fact('sample', 'Minimum area of a sample')).toBe('20 ft²');
    // 100 + 0.5 * 120 + 3 * 4 = 172; 200 + 0.5 * 2 * (200/4 + 4) = 254.
    expect(list.fact('protection', 'Masking')).toBe('426 ft²');
    // 426 * 1.10; (120 + 108) * 1.1; ((160 + 254) / 108 + 3 * 6 / 60) / (50 / 60).
    expect(list.fact('protection', 'Film')).toBe('469 ft²');
    expect(list.fact('protection', 'Tape')).toBe('251 ft');
    expect(list.fact('protection', 'Time')).toBe('4.96 labor-hours');
    expect(list.fact('protection', 'Of these, washed afterwards')).toBe('S-2');
    // (900 / 300 + 200 / 600) / (50 / 60).
    expect(list.fact('scrape', 'Time')).toBe('4 labor-hours');
    // S = 1.0333 / 2; L = 40.746 / 70 - 0.1 = 0.4821, L/S = 0.9331; ((3 - 0.8706) / (2 * 0.9331))^2 = 1.302 min.
    expect(list.fact('pre-wet', 'Wet enough after')).toBe('1.3 min');
    expect(list.fact('pre-wet', 'Passes of plain water')).toBe('2');
    // Team-time a = 1/10, b = 0.6 / (16 sqrt(400/4000)) = 0.11859, s = 0.085 / 18 * 60 / 2 = 0.14167 min/ft2; moderate
    // under class 2 leaves 0.16 * 0.5, less than 0.085. Patch 5 / (0.11859 + 0.14167) = 19.21 ft2, one pass.
    expect(list.fact('apply', 'Patch, at most')).toBe('19.2 ft²');
    // 900 / 19.21 = 46.8.
    expect(list.fact('apply', 'Patches')).toBe('47');
    expect(list.fact('apply', 'Passes of cleaner')).toBe('1');
    // Not paced: 3 * 0.26026 / 5 - 0.14167 = 0.0145 is quicker than 0.1.
    expect(list.fact('apply', 'Pace of applying, one person')).toBe('10 ft²/min');
    expect(list.fact('apply', 'One patch is covered in')).toBe('1.92 min');
    // 19.21 / 70, of 128 fl oz a gallon; / 9; 900 / 70 * 1.05 = 13.5 gal in all, of which 1 part in 9.
    expect(list.fact('mix', 'Parts of water to 1 of concentrate')).toBe('8');
    expect(list.fact('mix', 'Mix for one patch')).toBe('0.274 gal = 35.1 fl oz');
    expect(list.fact('mix', 'Concentrate in it')).toBe('0.0305 gal = 3.9 fl oz');
    expect(list.fact('mix', 'Concentrate, whole wash with re-clean')).toBe('1.5 gal');
    expect(list.fact('mix', 'Water in the mix, whole wash')).toBe('12 gal');
    // 19.21 * 0.14167; persons: 2 * 0.14167 * (900 + 200) / 50.
    expect(list.fact('scrub', 'Scrub one patch, the whole team, for')).toBe('2.72 min');
    expect(list.fact('scrub', 'Time, whole zone')).toBe('6.23 labor-hours');
    expect(list.fact('scrub', 'Limited by')).toBeUndefined();
    expect(list.fact('dwell', 'Wait after scrubbing')).toBe('0 min');
    // 1.921 + 2.722; 1.921 + 5.
    expect(list.fact('dwell', 'Start to rinse, on the clock')).toBe('4.64 min');
    expect(list.fact('dwell', 'Last spot rinsed by, on the clock')).toBe('6.92 min');
    // 0.1 mm of water at 0.3115 kg/m2/h: later than the maximum dwell, so nothing is misted.
    expect(list.fact('dwell', 'Dry in this weather after')).toBe('19.3 min');
    expect(list.fact('dwell', 'Mist at least every')).toBeUndefined();
    // 2 * 20 * tan 20 degrees; 5.06 / 0.6.
    expect(list.fact('rinse', 'Width of the fan on the wall, at most')).toBe('14.6 in');
    expect(list.fact('rinse', 'Pressure')).toBe('400 psi');
    expect(list.fact('rinse', 'Flow')).toBe('5.06 gal/min');
    expect(list.fact('rinse', 'Pace of rinsing, one person')).toBe('8.43 ft²/min');
    expect(list.fact('rinse', 'Level 1')).toBe('S-1');
    // 1.05 * 1100 ft2 * (2 L/m2 of run-off / 40.746 + 0.6 + 1/70): what is taken up goes in and stays. What lies below
    // adds 900 * 0.38629 / 10 wettings of 20 * 4 ft2 with 0.5 L/m2, 34.1 gal, with re-clean 35.8.
    for (const id of ['protection', 'rinse', 'clear'])
      expect(list.fact(id, 'Water to collect')).toBe('802 gal');
    // 1.5 gal of concentrate, 5.678 L * 1.02 kg/L * 5% * 84.007 / 36.461 = 0.6672 kg.
    for (const id of ['protection', 'clear']) {
      expect(list.fact(id, 'Sodium bicarbonate, at most')).toBe('1.47 lb');
    }
  });

  it('wash masked masonry afterwards, at its own class and with its own numbers', () => {
    const later = list.step('later-1');
    expect(later?.title).toBe('Afterwards: Limestone, class 1, neutral detergent');
    expect(later?.todo[0]).toContain('Uncover S-2');
    expect(list.fact('later-1', 'Parts of water to 1 of concentrate')).toBe('64');
    // 200 / 70 * 1.05 / 65; light residue under class 1 leaves 0.4 * 0.2, so it is scrubbed like the brick.
    expect(list.fact('later-1', 'Concentrate, whole wash with re-clean')).toBe('0.0462 gal = 5.91 fl oz');
    expect(list.fact('later-1', 'Patch, at most')).toBe('19.2 ft²');
    expect(list.fact('later-1', 'Patches')).toBe('11');
    expect(list.step('sample')?.todo.join(' ')).toContain(
      'Wash a sample of Limestone with class 1 (neutral detergent)',
    );
  });

  it('carry the weather that they are reckoned for, and what is assumed of it', () => {
    const given = checklist(BRICK_OVER_MASKED_BASE, [
      ['weather.air', 50],
      ['weather.wind', 12],
    ]);
    expect(given.fact('pre-wet', 'Air')).toBe('50 °F');
    expect(given.fact('pre-wet', 'Minimum temperature to wash at')).toBe('40 °F');
    const ofDwell = ['Air', 'Face', 'Relative humidity', 'Wind'].map((label) =>
      given.step('dwell')?.facts.find((fact) => fact.label === label),
    );
    expect(ofDwell.map((fact) => [fact?.value, fact?.kind])).toEqual([
      ['50 °F', 'override'],
      ['68 °F', 'yours to state'],
      ['50%', 'yours to state'],
      ['12 mph', 'override'],
    ]);
  });

  it('warn of what may not meet the cleaner', () => {
    expect(list.step('protection')?.todo.join(' ')).toContain('this cleaner must not touch Limestone (S-2)');
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
    expect(list.ids).toEqual([
      'age',
      'sample-wash',
      'sample',
      'protection',
      'scrape',
      'scrub',
      'rinse',
      'clear',
      'look',
    ]);
    expect(list.notice).toContain('clear water');
    expect(list.fact('rinse', 'Minimum temperature to wash at')).toBe('40 °F');
    expect(list.fact('clear', 'Sodium bicarbonate, at most')).toBeUndefined();
    // 400 * 0.5 / 18 / (50 / 60); a team of two: 2 * 60 * 0.5^-1 * 18 / 3600.
    expect(list.fact('scrub', 'Time, whole zone')).toBe('13.3 labor-hours');
    expect(list.fact('scrub', 'Pace of scrubbing, the whole team')).toBe('1.2 ft²/min');
  });

  it('every wall masked: says so, and washes nothing', () => {
    const list = checklist([wall('A', 'Marble', [10, 'only', ''])]);
    expect(list.ids).toEqual(['protection', 'clear']);
    expect(list.notice).toContain('Nothing is washed here');
    expect(list.notice).toContain('Out of scope: A, masonry that is covered and left unwashed');
    expect(list.fact('protection', 'Of these, out of scope')).toBe('A');
  });

  it('every wall masked for the time being: washes the masonry afterwards', () => {
    const list = checklist([wall('A', 'Marble', [10, 'yes', '']), wall('B', 'Copper', [10, 'yes', ''])]);
    expect(list.ids).toEqual([
      'age',
      'sample-wash',
      'sample',
      'protection',
      'scrape',
      'later-0',
      'clear',
      'look',
    ]);
    expect(list.notice).toContain('uncovered and washed afterwards');
    expect(list.step('later-0')?.title).toBe('Afterwards: Marble, class 0, clear water');
    expect(list.fact('later-0', 'Walls')).toBe('A');
    expect(list.step('later-0')?.todo.join(' ')).toContain('rinse with clear water');
  });

  it('a milder cleaner than the residue needs: scrubbing', () => {
    const list = checklist([wall('A', 'Limestone'), wall('B', 'Red clay brick')]);
    expect(list.fact('scrub', 'Limited by')).toBe('Limestone');
    expect(list.fact('scrub', 'Class that the heaviest residue needs')).toBe('2');
    // 800 * 0.4 * 0.5 / 18 / (50 / 60).
    expect(list.fact('scrub', 'Time, whole zone')).toBe('10.7 labor-hours');
  });

  it('scrubbing that does not fit the dwell: more passes, and the share of patches that get one more', () => {
    const heavy = wall('A', 'Limestone').with(10, 'heavy');
    const list = checklist([heavy]);
    // 0.4 / 18 * 60 / 2 = 0.6667 min/ft2 against 5 / 8 - 0.11859 = 0.50641 on the smallest patch: 1.316 passes.
    expect(list.fact('apply', 'Passes of cleaner')).toBe(
      '1, and 32% of the patches, the dirtier ones, again',
    );
    expect(list.fact('apply', 'Patch, at most')).toBe('8 ft²');
    expect(list.step('apply')?.todo.join(' ')).toContain('apply, scrub and rinse it again');
  });

  it('a sensitive wall is rinsed at its own pressure, and each wall has its numbers where they differ', () => {
    const rows = [wall('A', 'Sand-faced brick'), wall('B', 'Red clay brick'), wall('C', 'Red clay brick')];
    const list = checklist(rows);
    expect(list.fact('rinse', 'Pressure: A')).toBe('200 psi, Sand-faced brick');
    expect(list.fact('rinse', 'Pressure: B, C')).toBe('400 psi');
    expect(list.fact('rinse', 'Pressure')).toBeUndefined();
    // 16 * sqrt(200 / 4000) and sqrt(400 / 4000).
    expect(list.fact('rinse', 'Flow: A')).toBe('3.58 gal/min');
    expect(list.fact('rinse', 'Flow: B, C')).toBe('5.06 gal/min');
    // Class 1 leaves 0.4 * 0.5: s = 0.2 / 18 * 60 / 2 = 0.33333; 5 / (0.6 / 3.578 + s), 5 / (0.6 / 5.060 + s).
    expect(list.fact('apply', 'Patch, at most: A')).toBe('9.98 ft²');
    expect(list.fact('apply', 'Patch, at most: B, C')).toBe('11.1 ft²');
    expect(list.fact('apply', 'Patches: B, C')).toBe('73');
    expect(list.step('rinse')?.todo.join(' ')).toContain(
      'Turn the pressure down before Sand-faced brick (A)',
    );
    const own = checklist([wall('A', 'Sand-faced brick')], [['material.sand-faced-brick.pressure', 300]]);
    expect(own.step('rinse')?.facts[0]).toMatchObject({
      value: '300 psi, Sand-faced brick',
      kind: 'override',
    });
  });

  it('a narrow window paces the quicker step', () => {
    const { fact } = checklist(
      [wall('A', 'Red clay brick').with(10, 'light')],
      [
        ['dwell.least', 5],
        ['scrub.full', 1800],
        ['cleaner.class', 1],
      ],
    );
    // s = 0.085 / 1800 * 60 / 2 = 0.00142; 5 * (0.11859 + s) / 5 - s = 0.11859: applied no quicker than rinsed.
    expect(fact('apply', 'Pace of applying, one person')).toBe('8.43 ft²/min');
    expect(fact('rinse', 'Pace of rinsing, one person')).toBe('8.43 ft²/min');
  });

  it('a nozzle too near is told at the rinse', () => {
    const list = checklist([wall('A', 'Red clay brick')], [['nozzle.distance', 4]]);
    expect(list.step('rinse')?.todo.join(' ')).toContain(
      'the workbook has set 4 in off, less than the minimum',
    );
  });

  it('SI: the same work in other units', () => {
    const list = checklist([wall('A', 'Red clay brick')], [['units', 'SI']]);
    // 19.21 ft2 = 1.785 m2; 400 m2 / 1.785 m2 = 224.1.
    expect(list.fact('apply', 'Patch, at most')).toBe('1.78 m²');
    expect(list.fact('apply', 'Patches')).toBe('225');
  });

  it('a label of its own is an override', () => {
    const list = checklist([wall('A', 'Red clay brick')], [['dwell.most', 4]]);
    expect(list.step('dwell')?.facts.find(({ label }) => label === 'Maximum dwell')).toMatchObject({
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
      'Too young: A. Wait until they are 7 days old, then enter the new age in the Age column.',
    );
  });

  it('applying in cold or hot weather, never the rinse: cleaner on the wall is always rinsed', () => {
    const holds = (factors: unknown[][], material = 'Red clay brick') =>
      checklist([wall('A', material)], factors).steps.flatMap(({ id, hold }) =>
        hold === undefined ? [] : [[id, hold]],
      );
    const cold =
      'Too cold: face at 39 °F. Wait until it is above 40 °F and stays so until the wall is dry, then enter the new weather in the factors.';
    expect(holds([['weather.surface', 39]])).toEqual([
      ['mix', cold],
      ['apply', cold],
    ]);
    const hot =
      'Too hot: face at 95 °F. Wait until it is below 90 °F, then enter the new weather in the factors.';
    expect(holds([['weather.surface', 95]])).toEqual([
      ['mix', hot],
      ['apply', hot],
    ]);
    // Clear water leaves nothing on the wall that has to be rinsed off, and a wet wall may freeze.
    expect(holds([['weather.surface', 39]], 'Marble')).toEqual([['rinse', cold]]);
    expect(holds([['weather.surface', 95]], 'Marble')).toEqual([]);
    // What is washed afterwards waits like the rest.
    const [bare, base] = BRICK_OVER_MASKED_BASE;
    const both = checklist([bare ?? [], base ?? []], [['weather.surface', 95]]);
    expect(both.step('later-1')?.hold).toBe(hot);
  });

  it('spraying in wind, but not the brush', () => {
    const { step } = checklist([wall('A', 'Red clay brick')], [['weather.wind', 14]]);
    expect(step('apply')?.todo.join(' ')).toContain('Do not spray: wind of 14 mph, more than 10 mph.');
    expect(step('apply')?.hold).toBeUndefined();
  });

  it('a cleaner that dries before its minimum dwell goes on with misting', () => {
    const { step, fact } = checklist(
      [wall('A', 'Red clay brick')],
      [
        ['weather.surface', 86],
        ['weather.humidity', 20],
        ['weather.wind', 30 / 1.609344],
      ],
    );
    expect(step('apply')?.hold).toBeUndefined();
    expect(step('dwell')?.hold).toBeUndefined();
    // 5 (48^2.5 - 0.2 * 38^2.5) (30 + 4) 1e-6 = 2.411 kg/(m2 h); 0.1 / 2.411 * 60; 5 / 2.4886 - 1.
    expect(fact('dwell', 'Mist at least every')).toBe('2.49 min');
    expect(fact('dwell', 'Mistings in a pass')).toBe('1.01');
    expect(step('dwell')?.todo.join(' ')).toContain('mist it at least every 2.49 min');
    expect(step('dwell')?.todo.join(' ')).toContain('dries before the minimum dwell');
  });

  it('a wall that no patch fits into the dwell', () => {
    const { step, fact } = checklist(
      [wall('A', 'Red clay brick')],
      [
        ['rate.apply', 1],
        ['cleaner.class', 2],
      ],
    );
    // 8 ft2, the smallest patch, takes 8 min to cover.
    expect(step('apply')?.hold).toContain('Wall A has no contact window');
    expect(step('dwell')?.hold).toContain('no contact window');
    expect(fact('apply', 'Patch, at most')).toBeUndefined();
  });

  it('an age that is not stated is for a person to vouch for', () => {
    const { step, fact } = checklist([wall('A', 'Red clay brick', ['', 'no', ''])]);
    expect(fact('age', 'Age not stated')).toBe('A');
    expect(step('age')?.hold).toBeUndefined();
  });
});
