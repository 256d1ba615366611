import { describe, expect, it } from 'vitest';
import { lines, number, numberIn, text, type Line } from '../properties/call';

type Cells = readonly (readonly unknown[])[];

const walls: Cells = [
  ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Mortar', 'Residue', 'Access', 'Openings'],
  ['plain', 'A', 'Red clay brick', 2000, 20, 'N', 'light', 'ground', 0],
  ['hard', 'A', 'Red clay brick', 1000, 20, 'M', 'heavy', 'ladder', 40],
  ['mild', 'B', 'Marble', 600, 12, 'N', 'light', 'ground', 0],
];
const HEAD = ['Date', 'Zone', 'Wall', 'Task', 'Area', 'Hours'];

function rates(entries: Cells, factors: Cells = []): Line[] {
  return lines('RATES', [HEAD, ...entries], walls, factors);
}
function rateOf(spilled: readonly Line[], factor: string): Line {
  const found = spilled.find((line) => line['Factor'] === factor);
  if (found === undefined) throw new Error(`There is no rate of ${factor}.`);
  return found;
}
const hours = (zone: string, part: string, factors: Cells = []): number =>
  number('LABORHOURS', walls, zone, factors, part);

describe('RATES', () => {
  it('is the known answer: 2, 12 and 22.5 net hours on 100, 400 and 900 ft2 against 60 ft2/h', () => {
    // Type N on the ground, a smooth face: u = hours x working.share / area. 50 of 60 min are net.
    const gross = (net: number): number => (net * 60) / 50;
    const line = rateOf(
      rates(
        [
          [46143, '', 'plain', 'scrape', 100, gross(2)],
          [46145, '', 'plain', 'scrape', 400, gross(12)],
          [46144, '', 'plain', 'scrape', 900, gross(22.5)],
        ],
        [['rate.scrape.light', 60]],
      ),
      'rate.scrape.light',
    );
    expect(numberIn(line, 'Blended')).toBeCloseTo(1 / 0.0198293, 3);
    expect(numberIn(line, 'Low end of its 80% range')).toBeCloseTo(1 / 0.0246224, 3);
    expect(numberIn(line, 'High end of its 80% range')).toBeCloseTo(1 / 0.0159693, 3);
    expect(numberIn(line, 'Weight of the entries')).toBeCloseTo(0.354839, 6);
    // 1,400 ft2 by 36.5 net hours.
    expect(numberIn(line, 'From the entries alone')).toBeCloseTo(1400 / 36.5, 9);
    expect(numberIn(line, 'In force')).toBeCloseTo(60, 9);
    expect(line['Kind']).toBe('stated');
    expect(numberIn(line, 'Area')).toBeCloseTo(1400, 9);
    expect(numberIn(line, 'Hours')).toBeCloseTo(gross(36.5), 9);
    expect([line['Entries'], line['Unit'], line['Note for the factor']]).toEqual([
      3,
      'ft²/labor-h',
      'from 3 entries to May 3, 2026',
    ]);
    // 33.3 to 50 ft2 a net hour.
    expect(numberIn(line, 'Smallest entry')).toBeCloseTo(400 / 12, 9);
    expect(numberIn(line, 'Largest entry')).toBeCloseTo(100 / 2, 9);
  });

  it.each([
    ['scrape', 'rate.scrape.light', 'B'],
    ['mask', 'rate.maskOn', 'A'],
    ['unmask', 'rate.maskOff', 'A'],
    ['glass', 'rate.glass', 'A'],
    ['prewet', 'rate.wet', 'A'],
    ['apply', 'rate.apply', 'A'],
    ['scrub', 'scrub.full', 'A'],
    ['rinse', 'rinse.perArea', 'A'],
  ])('%s that takes half as long again shows %s by as much, whatever the walls', (task, factor, zone) => {
    const done = numberIn(
      lines('PROGRESS', walls, [HEAD], zone, []).find((line) => line['Task'] === task),
      'Area',
    );
    const line = rateOf(rates([['', zone, '', task, done, hours(zone, task) * 1.5]]), factor);
    const slower = factor === 'rinse.perArea' ? 1.5 : 1 / 1.5;
    expect(numberIn(line, 'From the entries alone')).toBeCloseTo(numberIn(line, 'In force') * slower, 9);
    expect(line['Kind']).toBe('starting value');
    // Between the two, nearer to the one in force.
    const moved = Math.log(numberIn(line, 'Blended') / numberIn(line, 'In force')) / Math.log(slower);
    expect(moved).toBeGreaterThan(0);
    expect(moved).toBeLessThan(0.5);
  });

  it('below shows its rate where something lies below', () => {
    const stacked: Cells = [
      ['Wall', 'Zone', 'Level', 'Material', 'Area', 'Height', 'Residue'],
      ['up', 'A', 1, 'Red clay brick', 900, 20, 'heavy'],
      ['down', 'A', 2, 'Red clay brick', 900, 20, 'heavy'],
    ];
    const budget = number('LABORHOURS', stacked, 'A', [], 'below');
    const spilled = lines('RATES', [HEAD, ['', '', 'up', 'below', 900, budget * 2]], stacked);
    const line = rateOf(spilled, 'rate.below');
    expect(numberIn(line, 'From the entries alone')).toBeCloseTo(numberIn(line, 'In force') / 2, 9);
  });

  it('a rate that is put in force meets the hours of its entries', () => {
    const line = rateOf(rates([['', '', 'hard', 'scrub', 960, 100]]), 'scrub.full');
    const plain = numberIn(line, 'From the entries alone');
    const rows = lines('WALLROWS', walls, null, [['scrub.full', plain]]);
    expect(
      numberIn(
        rows.find((row) => row['Wall'] === 'hard'),
        'Scrub hours',
      ),
    ).toBeCloseTo(100, 9);
  });

  it('shares the hours of a zone of two residues out as the estimate does', () => {
    // 2,000 and 960 ft2 are scraped.
    const spilled = rates([['', 'A', '', 'scrape', 2960, hours('A', 'scrape') * 2]]);
    const [light, heavy] = [rateOf(spilled, 'rate.scrape.light'), rateOf(spilled, 'rate.scrape.heavy')];
    expect(numberIn(light, 'From the entries alone')).toBeCloseTo(numberIn(light, 'In force') / 2, 9);
    expect(numberIn(heavy, 'From the entries alone')).toBeCloseTo(numberIn(heavy, 'In force') / 2, 9);
    expect(numberIn(light, 'Area')).toBeCloseTo(2000, 6);
    expect(numberIn(heavy, 'Area')).toBeCloseTo(960, 6);
    expect(numberIn(light, 'Hours') + numberIn(heavy, 'Hours')).toBeCloseTo(hours('A', 'scrape') * 2, 9);
  });

  it.each([
    [['', 'A', '', 'wash', 100, 3], 'wash', 'record prewet, apply, scrub, rinse and below separately'],
    [['', 'A', '', 'move', 100, 3], 'move', 'No single rate sets the hours of move'],
    [['', '', '', 'setup', 0, 3], 'setup', 'No single rate sets the hours of setup'],
    [['', 'A', '', 'tend', 100, 3], 'tend', 'No single rate sets the hours of tend'],
    [['', 'A', '', 'scrub', 0, 3], 'scrub', 'No rate without an area: row 2'],
    [['', '', 'plain', 'glass', 100, 3], 'glass', 'The estimate has no hours for this there: row 2'],
  ])('%j gives none, in words', (entry, task, says) => {
    const [line, ...more] = rates([entry]);
    expect(more).toEqual([]);
    expect([line?.['Factor'], line?.['Task'], line?.['Entries']]).toEqual(['', task, 1]);
    expect(text(line?.['Finding'])).toContain(says);
  });

  it('names outliers and counts them', () => {
    const usual = Array.from({ length: 5 }, (_, index) => ['', '', 'plain', 'scrape', 100, 1 + index / 50]);
    const line = rateOf(rates([...usual, ['', '', 'plain', 'scrape', 100, 12]]), 'rate.scrape.light');
    expect(line['Entries']).toBe(6);
    expect(text(line['Finding'])).toBe('Far from the others, counted anyway: row 7.');
    const without = rateOf(rates(usual), 'rate.scrape.light');
    expect(numberIn(line, 'Blended')).toBeLessThan(numberIn(without, 'Blended'));
    expect(without['Finding']).toBe('');
  });

  it('warns where the rate in force is from entries already', () => {
    const own: Cells = [['rate.scrape.light', 500, 'from 9 entries to May 3, 2026']];
    const line = rateOf(rates([['', '', 'plain', 'scrape', 100, 1]], own), 'rate.scrape.light');
    expect(text(line['Finding'])).toContain('count twice');
    const label: Cells = [['rate.scrape.light', 500, 'sample panel']];
    expect(rateOf(rates([['', '', 'plain', 'scrape', 100, 1]], label), 'rate.scrape.light')['Finding']).toBe(
      '',
    );
  });

  it('spills its headings alone where nothing is recorded', () => {
    expect(rates([])).toEqual([]);
  });
});
