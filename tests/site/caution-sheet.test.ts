import { describe, expect, it } from 'vitest';
import { cautions, cautionTopics } from '../../src/rules/cautions';
import { siteSources } from '../../src/rules/site-sources';
import { cautionSheet } from '../../src/site/caution-sheet';
import { BRICK_OVER_MASKED_BASE, estimated } from './job';

function sheet(rows: unknown[][], factors: unknown[][] = []) {
  const job = estimated(rows, factors);
  const lines = cautionSheet(job.zones, job.factors);
  return { lines, ids: lines.map(({ id }) => id), of: (id: string) => lines.find((line) => line.id === id) };
}

const row = (changes: Partial<Record<number, unknown>>, name = 'W') => {
  const plain = [name, 'Z', 1, 'Red clay brick', 100, 8, 0, 0, 0, 'N', 'light', 10, 'no', ''] as unknown[];
  for (const [at, value] of Object.entries(changes)) plain[Number(at)] = value;
  return plain;
};
const [ZONE, LEVEL, MATERIAL, HEIGHT, OPENINGS, FIXTURES, RESIDUE, AGE, MASKED] = [
  1, 2, 3, 5, 6, 8, 10, 11, 12,
];

describe('the table of cautions', () => {
  it('founds each caution as well as its source, and no better', () => {
    for (const { id, source, kind } of cautions) expect([id, kind]).toEqual([id, siteSources[source].kind]);
  });

  it('names each caution once', () => {
    expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length);
  });
});

describe('the caution sheet', () => {
  it('starts with label, safety data sheet, local codes and licensed practice, whatever the job', () => {
    const first = ['label', 'safety-data-sheet', 'local-codes', 'licensed-practice', 'makers-advice'];
    expect(sheet(BRICK_OVER_MASKED_BASE).ids.slice(0, 5)).toEqual(first);
    expect(sheet([row({ [MASKED]: 'yes' })]).ids.slice(0, 5)).toEqual(first);
  });

  it('keeps its topics together, in their order', () => {
    const topics = sheet(BRICK_OVER_MASKED_BASE).lines.map(({ topic }) => topic);
    const order = Object.keys(cautionTopics);
    expect(topics.map((topic) => order.indexOf(topic))).toEqual(
      topics.map((topic) => order.indexOf(topic)).sort((a, b) => a - b),
    );
  });

  it('says why: class, materials, height, jet, scraping, alkali', () => {
    const { of } = sheet(BRICK_OVER_MASKED_BASE);
    expect(of('eyewash')?.places).toEqual([{ where: 'South', why: 'class 2, buffered mild acid' }]);
    // 20 ft over 4 ft.
    expect(of('fall-protection')?.places).toEqual([{ where: 'South', why: '24 ft high' }]);
    // 16 * sqrt(400 / 4000) = 5.060 gal/min; 0.0526 * 5.060 * sqrt(400) = 5.323 lbf.
    expect(of('jet')?.places[0]?.why).toBe(
      '400 psi, 5.06 gal/min: pushes back with 5.32 lbf; 20 in off, fan of 40°',
    );
    // ((1000 - 100) / 300 + 200 / 600) / (50 / 60) = 4, the base too: it is washed afterwards.
    expect(of('silica')?.places[0]?.why).toBe(
      '4 labor-hours of scraping and brushing, moderate and light residue',
    );
    // 900 ft2 / 70 / 9 * 1.05 = 1.5 gal; 5.678 L * 1.02 kg/L * 5% = 0.2896 kg HCl; * 84.007 / 36.461 = 0.6672 kg.
    expect(of('neutralizing')?.places[0]?.why).toBe('1.47 lb of sodium bicarbonate');
    expect(of('weaker-masked')?.places).toEqual([
      { where: 'South: S-2', why: 'Limestone, masked, class 2, buffered mild acid' },
    ]);
    expect(of('openings')?.places).toEqual([
      { where: 'South: S-1', why: '100 ft² of openings, class 2, buffered mild acid' },
    ]);
    expect(of('electrical')?.places).toEqual([{ where: 'South: S-1', why: '3 fixtures' }]);
  });

  it('says how much water is to be collected, and in what weather', () => {
    const { of } = sheet(BRICK_OVER_MASKED_BASE);
    // 1.05 * 1100 ft2 * (2 passes of 1 L/m2 / 40.746 + 0.6 + 1/70), and what lies below: 900 ft2 at 0.38629 min a
    // ft2 are 34.77 wettings of 20 * 4 ft2 with 0.5 L/m2, 34.1 gal, with re-clean 35.8.
    expect(of('plan-runoff')?.places).toEqual([{ where: 'South', why: '802 gal to collect' }]);
    // 0.1 mm of water at 0.311 kg/m2/h.
    expect(of('freezing')?.places[0]?.why).toBe(
      'air 68 °F, face 68 °F, humidity 50%, wind 6.2 mph (assumed, where the workbook does not say); the cleaner is dry in 19.3 min',
    );
    const given = sheet(
      [row({ [MATERIAL]: 'Marble' })],
      [
        ['weather.air', 50],
        ['weather.surface', 45],
        ['weather.humidity', 80],
        ['weather.wind', 3],
        ['runoff.captured', 0],
      ],
    );
    expect(given.of('freezing')?.places[0]?.why).toBe('air 50 °F, face 45 °F, humidity 80%, wind 3 mph');
    expect(given.of('plan-runoff')?.places[0]?.why).toBe('none of it is collected, as the workbook stands');
    const masked = sheet([row({ [MASKED]: 'only' })]).ids;
    expect(masked).not.toContain('plan-runoff');
    expect(masked).not.toContain('freezing');
  });

  it('shows the numbers of its text in the system of the workbook', () => {
    const { of } = sheet(BRICK_OVER_MASKED_BASE);
    expect(of('sewer')?.text).toContain('not below pH 5.0');
    expect(of('fall-protection')?.text).toContain('above 10 ft');
    expect(of('hydrogen-chloride')?.text).toContain('5 ppm');
    const si = sheet([row({ [HEIGHT]: 4 })], [['units', 'SI']]);
    // 10 ft * 0.3048; 40 degF; 6 in.
    expect(si.of('fall-protection')?.text).toContain('above 3.05 m');
    expect(si.of('freezing')?.text).toContain('above 4.44 °C');
    expect(si.of('narrow-jet')?.text).toContain('152 mm or more from the wall');
  });

  it('speaks of no acid where none is used, and of no cleaner under clear water', () => {
    const detergent = sheet([row({})]).ids;
    expect(detergent).toContain('protection-to-wear');
    for (const id of ['eyewash', 'acid-into-water', 'hydrogen-chloride', 'neutralizing', 'corrosive-waste']) {
      expect(detergent).not.toContain(id);
    }
    const water = sheet([row({ [MATERIAL]: 'Marble' })]).ids;
    expect(water).not.toContain('protection-to-wear');
    expect(water).not.toContain('never-dry');
    expect(water).toContain('jet');
  });

  it('asks nothing of height up to the limit, and of a height that is not stated', () => {
    expect(sheet([row({ [HEIGHT]: 10 })]).ids).not.toContain('fall-protection');
    expect(sheet([row({ [HEIGHT]: '' })]).of('fall-protection')?.places).toEqual([
      { where: 'Z: W', why: 'height not stated' },
    ]);
  });

  it('stops what the workbook itself breaks: pressure, age, cold', () => {
    const { of } = sheet(
      [row({ [MATERIAL]: 'Sand-faced brick', [AGE]: 3 })],
      [
        ['nozzle.pressure', 400],
        ['weather.air', 35],
      ],
    );
    expect(of('over-pressure')).toMatchObject({
      stop: true,
      places: [{ where: 'Z: W', why: '400 psi set, Sand-faced brick takes 200 psi' }],
    });
    expect(of('too-young')).toMatchObject({ stop: true, places: [{ where: 'Z: W', why: '3 days old' }] });
    expect(of('too-cold')).toMatchObject({ stop: true, places: [{ where: 'Z', why: 'air at 35 °F' }] });
    expect(sheet(BRICK_OVER_MASKED_BASE).lines.filter(({ stop }) => stop)).toEqual([]);
  });

  it('stops a nozzle that is too near or too narrow', () => {
    const near = sheet([row({})], [['nozzle.distance', 4]]);
    expect(near.of('too-narrow-jet')).toMatchObject({
      stop: true,
      places: [{ where: 'Z', why: '4 in off' }],
    });
    const narrow = sheet([row({})], [['nozzle.angle', 15]]);
    expect(narrow.of('too-narrow-jet')?.places[0]?.why).toBe('fan of 15°');
    expect(sheet([row({})], [['nozzle.distance', 6]]).ids).not.toContain('too-narrow-jet');
  });

  it('counts masked masonry that is washed afterwards among the washed, with its own class', () => {
    const { of, ids } = sheet([
      row({ [MATERIAL]: 'Marble' }, 'A'),
      row({ [MATERIAL]: 'Light clay brick', [RESIDUE]: 'moderate', [MASKED]: 'yes' }, 'B'),
    ]);
    // Marble, bare beside it, takes clear water only.
    expect(ids).not.toContain('stain');
    const apart = sheet([
      row({ [AGE]: 40 }, 'A'),
      row({ [MATERIAL]: 'Light clay brick', [RESIDUE]: 'moderate', [MASKED]: 'yes', [AGE]: 3 }, 'B'),
    ]);
    expect(apart.of('stain')?.places).toEqual([
      { where: 'Z: B', why: 'Light clay brick, class 2, buffered mild acid' },
    ]);
    expect(apart.of('too-young')?.places).toEqual([{ where: 'Z: B', why: '3 days old' }]);
    expect(of('too-young')).toBeUndefined();
  });

  it('has the ropes of suspended scaffold shielded where acid is used on it, and nowhere else', () => {
    const swung = [['access.kind', 'suspended']];
    expect(sheet([row({ [RESIDUE]: 'moderate' })], swung).of('suspended-ropes')?.places).toEqual([
      { where: 'Z: W', why: 'class 2, buffered mild acid' },
    ]);
    expect(sheet([row({})], swung).ids).not.toContain('suspended-ropes');
    expect(sheet([row({ [RESIDUE]: 'moderate' })]).ids).not.toContain('suspended-ropes');
  });

  it('joins the zones that share a reason', () => {
    const { of } = sheet([
      row({}, 'A'),
      row({ [ZONE]: 'Y' }, 'B'),
      row({ [ZONE]: 'X', [RESIDUE]: 'heavy' }, 'C'),
    ]);
    expect(of('never-dry')?.places).toEqual([
      { where: 'Z; Y', why: 'class 1, neutral detergent' },
      { where: 'X', why: 'class 3, buffered acid at full label strength' },
    ]);
  });

  it('knows when every caution of the table applies', () => {
    const jobs = [
      sheet(
        [
          row({ [RESIDUE]: 'heavy', [OPENINGS]: 10, [FIXTURES]: 1, [AGE]: 3, [HEIGHT]: 40 }, 'A'),
          row({ [MATERIAL]: 'Coated glass', [MASKED]: 'yes', [LEVEL]: 2 }, 'B'),
          row({ [MATERIAL]: 'Copper', [MASKED]: 'yes' }, 'C'),
          row({ [MATERIAL]: 'Marble', [MASKED]: 'yes' }, 'D'),
          row({ [MATERIAL]: 'Plain concrete block', [MASKED]: 'yes' }, 'E'),
          row({ [MATERIAL]: 'Light clay brick', [ZONE]: 'Y', [RESIDUE]: 'moderate' }, 'F'),
          row({ [MATERIAL]: 'Plain concrete block', [ZONE]: 'Y' }, 'G'),
        ],
        [
          ['nozzle.pressure', 3000],
          ['nozzle.distance', 4],
          ['weather.air', 30],
          ['weather.surface', 100],
          ['weather.wind', 30],
          ['apply.pressure', 60],
          ['weather.humidity', 10],
        ],
      ),
      sheet(
        [
          row({ [RESIDUE]: 'moderate', [AGE]: 60 }, 'A'),
          row({ [MATERIAL]: 'Cast stone' }, 'B'),
          row({ [MATERIAL]: 'Copper', [ZONE]: 'Y' }, 'C'),
          row({ [RESIDUE]: 'moderate', [ZONE]: 'X' }, 'D'),
        ],
        [['access.kind', 'suspended']],
      ),
    ];
    const seen = new Set(jobs.flatMap(({ ids }) => ids));
    expect(cautions.map(({ id }) => id).filter((id) => !seen.has(id))).toEqual([]);
    for (const { lines } of jobs)
      for (const { text } of lines) expect(text).not.toMatch(/[{}]|undefined|NaN/);
  });
});
