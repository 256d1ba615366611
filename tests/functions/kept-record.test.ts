import { expect, it } from 'vitest';
import { readQuestion } from '../../functions/arguments';
import { recordOf } from '../../functions/kept-record';
import { linesOf, tracedInJob } from '../../functions/trace';
import { mixedUs } from '../trace/jobs';
import { record } from '../trace/replay';

/** The question of cells that are handed over anew. */
const ask = (zone = '', { walls, factors } = mixedUs) =>
  readQuestion(
    walls.map((row) => [...row]),
    zone,
    factors.map((row) => [...row]),
    null,
  );

it('is the same for every quantity of the same cells, whatever array they come in', () => {
  const first = tracedInJob('water', ask(), '').rec;
  expect(tracedInJob('tape', ask(), '').rec).toBe(first);
  expect(tracedInJob('labor-hours', ask('Atrium'), '').rec).toBe(first);
  expect(tracedInJob('water', ask(), 'A-1').rec).toBe(first);
});

it.each([
  ['a cell', { ...mixedUs, walls: mixedUs.walls.with(1, (mixedUs.walls[1] ?? []).with(4, 641)) }],
  ['a factor', { ...mixedUs, factors: mixedUs.factors.with(1, ['team.size', 4]) }],
])('is another where %s is', (_, other) => {
  const before = tracedInJob('labor-hours', ask(), '');
  const after = tracedInJob('labor-hours', ask('', other), '');
  expect(after.rec).not.toBe(before.rec);
  expect(after.lines).toEqual(record(other).rec.linesFor('laborHours'));
  expect(after.lines.at(-1)?.value).not.toBe(before.lines.at(-1)?.value);
  expect(tracedInJob('labor-hours', ask(), '').lines).toEqual(before.lines);
});

it('is of the zone where its lines alone are wanted, and of the job where others can be followed too', () => {
  const symbol = 'laborHours_z2';
  const ofJob = record(mixedUs).rec.linesFor(symbol);
  const ofZone = record(mixedUs, 'Atrium').rec.linesFor(symbol);
  expect(ofZone).not.toEqual(ofJob);
  for (let turn = 0; turn < 2; turn++) {
    expect(tracedInJob('labor-hours', ask('Atrium'), '').lines).toEqual(ofJob);
    expect(linesOf('labor-hours', ask('Atrium'), '')).toEqual(ofZone);
  }
});

it('is not kept where it takes much room, nor what was kept before it', () => {
  const small = ask('Atrium');
  const kept = recordOf(small, small.zones).rec;
  expect(recordOf(small, small.zones).rec).toBe(kept);
  const large = ask();
  const { rec } = recordOf(large, large.job, kept.size);
  expect(rec.size).toBeGreaterThan(kept.size);
  expect(recordOf(large, large.job, rec.size - 1).rec).not.toBe(rec);
  expect(recordOf(small, small.zones).rec).not.toBe(kept);
  const last = recordOf(large, large.job, rec.size).rec;
  expect(recordOf(large, large.job, rec.size).rec).toBe(last);
});
