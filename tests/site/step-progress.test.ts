import { describe, expect, it } from 'vitest';
import {
  changeZone,
  NO_PROGRESS,
  overrule,
  progressByZone,
  progressLeftOver,
  startClock,
  stopClock,
  takeDown,
  withdrawOverruled,
  type StepRecord,
} from '../../src/site/step-progress';

const record = (step: StepRecord['step'], who = 'R. Mason', done = true): StepRecord => ({
  step,
  done,
  who,
  when: '2026-05-04T08:00:00.000Z',
  note: '',
  decidedOn: ['a'],
});
const south = [{ zone: 'South', walls: ['a', 'b'] }];

describe('progress', () => {
  it('starts empty for every zone', () => {
    expect(progressByZone(NO_PROGRESS, south).get('South')).toEqual({
      zone: 'South',
      walls: ['a', 'b'],
      records: [],
      dwells: [],
      clock: '',
    });
  });

  it('keeps the latest record of a step', () => {
    const once = changeZone(NO_PROGRESS, south, 'South', takeDown(record('age', 'first')));
    const twice = changeZone(once, south, 'South', takeDown(record('age', 'second', false)));
    const both = changeZone(twice, south, 'South', takeDown(record('scrape')));
    expect(both.zones).toHaveLength(1);
    expect(both.zones[0]?.records.map(({ step, who, done }) => [step, who, done])).toEqual([
      ['age', 'second', false],
      ['scrape', 'R. Mason', true],
    ]);
  });

  it('survives a renamed zone, and takes its new name down with the next change', () => {
    const before = changeZone(NO_PROGRESS, south, 'South', takeDown(record('age')));
    const renamed = [{ zone: 'Library south', walls: ['a', 'b'] }];
    expect(progressByZone(before, renamed).get('Library south')?.records).toHaveLength(1);
    const after = changeZone(before, renamed, 'Library south', takeDown(record('sample')));
    expect(after.zones.map(({ zone, records }) => [zone, records.length])).toEqual([['Library south', 2]]);
  });

  it('keeps what belongs to a zone that is gone', () => {
    const before = changeZone(NO_PROGRESS, south, 'South', takeDown(record('age')));
    const other = [{ zone: 'North', walls: ['n'] }];
    expect(progressLeftOver(before, other).map(({ zone }) => zone)).toEqual(['South']);
    const after = changeZone(before, other, 'North', takeDown(record('age')));
    expect(after.zones.map(({ zone }) => zone)).toEqual(['South', 'North']);
    expect(progressLeftOver(before, south)).toEqual([]);
  });

  it('changes nothing in a zone that does not exist', () => {
    expect(changeZone(NO_PROGRESS, south, 'North', takeDown(record('age')))).toBe(NO_PROGRESS);
  });
});

describe('the clock of a zone', () => {
  it('keeps its first start, and each patch timed', () => {
    const started = changeZone(NO_PROGRESS, south, 'South', startClock('2026-05-04T08:00:00Z'));
    const again = changeZone(started, south, 'South', startClock('2026-05-04T08:02:00Z'));
    expect(again.zones[0]?.clock).toBe('2026-05-04T08:00:00Z');
    const stopped = changeZone(again, south, 'South', stopClock('2026-05-04T08:04:00Z'));
    expect(stopped.zones[0]).toMatchObject({
      clock: '',
      dwells: [{ start: '2026-05-04T08:00:00Z', stop: '2026-05-04T08:04:00Z' }],
    });
    expect(
      changeZone(stopped, south, 'South', stopClock('2026-05-04T08:05:00Z')).zones[0]?.dwells,
    ).toHaveLength(1);
  });
});

describe('a condition that is overruled', () => {
  const overruled = {
    hold: 'Too cold',
    who: 'A. Signer',
    when: '2026-05-04T07:00:00Z',
    why: 'tented, heated',
  };
  const after = (...changes: Parameters<typeof changeZone>[3][]) =>
    changes.reduce((progress, change) => changeZone(progress, south, 'South', change), NO_PROGRESS).zones[0]
      ?.records;

  it('is kept with the step, ticked or not, through later ticks', () => {
    expect(after(overrule('apply', overruled))).toMatchObject([{ step: 'apply', done: false, overruled }]);
    const ticked = [record('apply'), record('apply', 'later', false)].map(takeDown);
    expect(after(overrule('apply', overruled), ...ticked)).toMatchObject([
      { step: 'apply', done: false, who: 'later', overruled },
    ]);
    expect(after(takeDown(record('apply')), overrule('apply', overruled))).toMatchObject([
      { done: true, who: 'R. Mason', overruled },
    ]);
  });

  it('is taken back alone, and the tick stays', () => {
    expect(
      after(takeDown(record('apply')), overrule('apply', overruled), withdrawOverruled('apply')),
    ).toEqual([record('apply')]);
    expect(after(withdrawOverruled('apply'))).toEqual([]);
  });
});
