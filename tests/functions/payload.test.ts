import { describe, expect, it } from 'vitest';
import { MOST_LINES } from '../../functions/trace';
import { madeFactors, madeWalls } from '../../workbench/bench/made-walls';
import { parts } from '../../workbench/bench/parts';
import { number, spill } from './call';

// Platform documentation, "Resource limits and performance optimization for Office Add-ins": on the web a request or an
// answer of more than 5 MB is refused.
const MOST_PAYLOAD = 5_000_000;

describe('TRACE of a long job', () => {
  const walls = madeWalls(1_500);
  const whole = spill('TRACE', 'crew-hours', walls, null, madeFactors);

  it('is cut at its beginning, says how much is missing and which question is narrower', () => {
    const [head = []] = whole;
    expect(whole).toHaveLength(1 + MOST_LINES);
    // The hours of a zone and of a wall rest on all walls too, by their share of the job; a part does not.
    expect(head[7]).toMatch(/^Where\. \d+ left out: name one wall and a part, such as scrape hours of W0$/);
    expect(head).toHaveLength(8);
    const part = spill('TRACE', 'scrape hours', walls, null, madeFactors, null, 'W0');
    expect(JSON.stringify(part)).not.toContain('left out');
  });

  it.each([
    ['masking', null, null, ['name one zone, such as Zone 0', 'masking', 'Zone 0', null]],
    ['runoff', 'Zone 1', null, ['name one wall, such as W1', 'runoff', 'Zone 1', 'W1']],
    [
      'labor-hours',
      'Zone 1',
      'W1',
      ['name a part of it, such as scrape hours', 'scrape hours', 'Zone 1', 'W1'],
    ],
    ['price', 'Zone 1', 'W1', ['name a part of it, such as cleaner price', 'cleaner price', 'Zone 1', 'W1']],
  ] as const)('%s of %s, %s names a question whose lines are all shown', (what, zone, wall, narrower) => {
    const [hint, quantity, ofZone, ofWall] = narrower;
    const [head = []] = spill('TRACE', what, walls, zone, madeFactors, null, wall);
    expect(head[7]).toMatch(new RegExp(`^Where\\. \\d+ left out: ${hint}$`));
    const all = spill('TRACE', quantity, walls, ofZone, madeFactors, null, ofWall);
    expect(all.length).toBeLessThanOrEqual(1 + MOST_LINES);
    expect(all[0]?.[7]).toBe('Where');
  });

  it('says so where no question is narrower', () => {
    const [head = []] = spill('TRACE', 'days', walls, 'Zone 1', madeFactors, null, 'W1');
    expect(head[7]).toMatch(/^Where\. \d+ left out: every wall counts here$/);
  });

  it('ends in the number all the same, and stays below what the host takes', () => {
    expect(whole.at(-1)?.[2]).toBeCloseTo(number('CREWHOURS', walls, null, madeFactors), 9);
    expect(JSON.stringify(whole).length).toBeLessThan(MOST_PAYLOAD / 2);
  });

  it('of one wall is whole', () => {
    const one = spill('TRACE', 'water', walls, 'Zone 1', madeFactors, null, 'W1');
    expect(one.length).toBeLessThan(MOST_LINES);
    expect(JSON.stringify(one)).not.toContain('left out');
  });
});

it('the payloads that the benchmark prints are held to what the host takes', async () => {
  const figures = (await parts['payload']?.(200)) ?? [];
  expect(figures.map(({ name }) => name)).toEqual(
    ['arguments', 'SCHEDULE', 'WALLROWS', 'TRACE', 'CHECKS'].map((what) => `${what}, 200 rows, MB`),
  );
  for (const { most, value } of figures) {
    expect(most).toBe(MOST_PAYLOAD / 1e6);
    expect(value).toBeGreaterThan(0);
  }
});
