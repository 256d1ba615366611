import { describe, expect, it } from 'vitest';
import { NOTHING_WASHED } from '../../functions/governing';
import { readFactors } from '../../src/rules/read-factors';
import { bareLoop, labelsDiffer } from '../../workbench/bench/bare-loop';
import { figureTable, isMissed } from '../../workbench/bench/figures';
import {
  changedWalls,
  madeAlternates,
  changeWalls,
  madeFactors,
  madeWalls,
  scatterLabels,
} from '../../workbench/bench/made-walls';
import { nativeFormulas } from '../../workbench/bench/native-formulas';
import { expectSameTotals } from '../../workbench/bench/same-totals';
import { inTurn, median } from '../../workbench/bench/timing';
import { bundled } from '../../workbench/bench/without-recorder';
import { number, spill } from '../functions/call';

const factors = readFactors(madeFactors);
const walls = madeWalls(60);
const schedule = spill('SCHEDULE', walls, null, madeFactors);

describe('what SCHEDULE is compared with', () => {
  it('comes to the same in a bare loop', () => {
    expectSameTotals(schedule, bareLoop(walls, factors), 'the bare loop');
  });

  it.each([
    ['one person', [['team.size', 1]]],
    [
      'five persons, two teams',
      [
        ['team.size', 5],
        ['teams', 2],
      ],
    ],
    ['a window without play', [['dwell.least', 5]]],
    ['no minimum dwell', [['dwell.least', 0]]],
    [
      'a long window and patches that bind',
      [
        ['dwell.most', 20],
        ['patch.most', 20],
      ],
    ],
    [
      'scrubbing in many passes',
      [
        ['scrub.full', 8],
        ['cleaner.mostApplications', 20],
      ],
    ],
    [
      'three applications, a small nozzle',
      [
        ['cleaner.applications', 3],
        ['nozzle.number', 10],
      ],
    ],
    [
      'a thin mix and slow pre-wet',
      [
        ['cleaner.coverage', 300],
        ['rate.wet', 3],
      ],
    ],
    [
      'a film thicker than the mix',
      [
        ['weather.film', 1],
        ['prewet.mostPasses', 20],
      ],
    ],
    [
      'heat',
      [
        ['weather.surface', 110],
        ['weather.humidity', 10],
      ],
    ],
    [
      'wide drops, often wetted',
      [
        ['access.dropWidth', 100],
        ['below.interval', 1],
        ['rate.below', 10],
      ],
    ],
    ['ladders where nothing is said', [['access.kind', 'ladder']]],
    ['a class of the user', [['cleaner.class', 1]]],
    [
      'least hire and least price',
      [
        ['hire.least', 99],
        ['price.minimum', 1e6],
      ],
    ],
    [
      'nothing done once more, no sample',
      [
        ['reclean.share', 0],
        ['sample.hours', 0],
      ],
    ],
  ] as [string, [string, unknown][]][])('comes to the same in a bare loop with %s', (_, own) => {
    const others = madeFactors.filter(([id]) => own.every(([given]) => given !== id));
    const range = [...others, ...own];
    expectSameTotals(
      spill('SCHEDULE', walls, null, range),
      bareLoop(walls, readFactors(range)),
      'the bare loop',
    );
  });

  it('has zones of each class, masked masonry of several ceilings, and walls out of scope', () => {
    const classes = [...bareLoop(walls, factors).values()].map((zone) => zone['Class']);
    expect(new Set(classes)).toEqual(new Set([0, 1, 2, 3]));
    const header = walls[0] as string[];
    const of = (heading: string): unknown[] => walls.slice(1).map((row) => row[header.indexOf(heading)]);
    expect(new Set(of('Masked'))).toEqual(new Set(['yes', 'no', 'only']));
    expect(new Set(of('Level')).size).toBe(5);
    expect(new Set(of('Access')).size).toBe(5);
  });

  it('comes to the same as ordinary formulas in a spreadsheet', async () => {
    const { totals, milliseconds } = await nativeFormulas(walls, factors);
    expectSameTotals(schedule, totals, 'the ordinary formulas');
    expect(milliseconds).toBeGreaterThan(0);
  });

  it('comes to the same without the recorder, which then takes nothing down', async () => {
    const { runs } = await bundled(false);
    expect(runs.SCHEDULE([walls, null, madeFactors])).toEqual(schedule);
    const trace = ['water', walls, null, madeFactors] as const;
    expect(spill('TRACE', ...trace).length).toBeGreaterThan(1);
    expect(() => runs.TRACE(trace)).toThrow(NOTHING_WASHED);
  });

  it('proves nothing where a quantity differs, or is missing', () => {
    const totals = bareLoop(walls, factors);
    const zone = totals.get('Zone 2') ?? {};
    const price = zone['Price'] ?? NaN;
    const compare = (changed: Record<string, number>) => () => {
      expectSameTotals(schedule, new Map([...totals, ['Zone 2', changed]]), 'it');
    };
    expect(compare({ ...zone, Price: price * (1 + 1e-8) })).toThrow(/^it, Zone 2, Price: /);
    expect(compare({ ...zone, Price: NaN })).toThrow('it, Zone 2, Price: NaN');
    const others = Object.fromEntries(Object.entries(zone).filter(([heading]) => heading !== 'Tape'));
    expect(compare(others)).toThrow('it, Zone 2, Tape: undefined');
    totals.delete('Zone 7');
    expect(() => {
      expectSameTotals(schedule, totals, 'it');
    }).toThrow('it: 7 zones, not 8');
  });

  it('looks for a label that stands twice, as reading does', () => {
    const scattered = scatterLabels(madeWalls(60));
    expect(labelsDiffer(scattered)).toBe(true);
    const [, first = [], ...others] = scattered;
    expect(labelsDiffer([[], first, ...others, [...first]])).toBe(false);
  });

  it('is about other walls after each change', () => {
    const changed = madeWalls(60);
    const masking = [0, 1, 2].map((turn) => {
      changeWalls(changed, turn);
      return number('MASKING', changed, 'Zone 0');
    });
    expect(new Set(masking).size).toBe(3);
  });
});

describe('what alternates and changes are timed on', () => {
  it('is as many of them as the figure says, each of which moves something', () => {
    const few = madeWalls(46);
    const alternates = spill('ALTERNATES', few, madeAlternates(few, 40), null, madeFactors);
    // Headings, the base bid, and all that save together stand beside them.
    expect(alternates).toHaveLength(43);
    const changes = spill('CHANGES', few, changedWalls(few, 23), madeFactors);
    expect(changes).toHaveLength(25);
    expect(
      changes.slice(1, -1).every((line) => typeof line[2] === 'string' && line[2].startsWith('Area')),
    ).toBe(true);
  });
});

describe('figures', () => {
  it('miss a limit that they lie beyond, and no other', () => {
    expect(isMissed({ name: '', value: 3, most: 3 })).toBe(false);
    expect(isMissed({ name: '', value: 3.001, most: 3 })).toBe(true);
    expect(isMissed({ name: '', value: 20, least: 20 })).toBe(false);
    expect(isMissed({ name: '', value: 19.9, least: 20 })).toBe(true);
    expect(isMissed({ name: '', value: NaN, most: 3 })).toBe(true);
    expect(isMissed({ name: '', value: 1e9 })).toBe(false);
  });

  it('stand with their limits beside them', () => {
    const figures = [
      { name: 'by the bare loop', value: 2.71828, most: 3 },
      { name: 'by formulas', value: 12, least: 20 },
      { name: 'ns', value: 123456 },
    ];
    expect(figureTable(figures).split('\n')).toEqual([
      'by the bare loop   2.718  at most 3    kept',
      'by formulas           12  at least 20  MISSED',
      'ns                123500',
    ]);
  });

  it('are medians of things done in turn, the first half of the turns left out', () => {
    expect(median([5, 1, 9])).toBe(5);
    expect(median([100, 2, 1])).toBe(2);
    const done: string[] = [];
    const times = inTurn(
      { a: (turn) => done.push(`a${String(turn)}`), b: (turn) => done.push(`b${String(turn)}`) },
      2,
    );
    expect(done).toEqual(['a0', 'b0', 'b1', 'a1', 'a2', 'b2', 'b3', 'a3']);
    expect(Object.keys(times)).toEqual(['a', 'b']);
  });
});
