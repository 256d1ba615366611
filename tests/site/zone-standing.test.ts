import { describe, expect, it } from 'vitest';
import type { StandingStep, StepStanding } from '../../src/site/step-gates';
import { NO_PROGRESS, changeZone, startClock, stopClock, strikeDwell } from '../../src/site/step-progress';
import { isAllDone, standingWords, zoneStanding } from '../../src/site/zone-standing';

const step = (standing: StepStanding): StandingStep => ({
  step: { id: 'age', title: '', todo: [], facts: [], source: 'tn20', kind: 'published' },
  standing,
  reason: '',
  record: undefined,
  condition: '',
  overruled: undefined,
});
const words = (...standings: StepStanding[]) => standingWords(zoneStanding(standings.map(step), 0));

describe('the standing of a zone', () => {
  it('counts what is done, and says where nothing may be done now', () => {
    expect(words('done', 'done', 'open', 'held')).toBe('2 of 4 steps done');
    expect(words('open', 'held')).toBe('not begun');
    expect(words('done', 'held', 'held')).toBe('1 of 3 steps done, held');
    expect(words('done', 'done')).toBe('all steps done');
    expect(words()).toBe('no steps');
  });

  it('is all done only where every step is', () => {
    const all = [['done', 'done'], ['done', 'again'], []] as StepStanding[][];
    expect(all.map((standings) => isAllDone(zoneStanding(standings.map(step), 0)))).toEqual([
      true,
      false,
      false,
    ]);
    expect(zoneStanding([step('done'), step('again'), step('open')], 0).next?.standing).toBe('again');
  });

  it('tells how many items of the punch list are open, also where the zone was signed off over them', () => {
    const open = (count: number, ...standings: StepStanding[]) =>
      standingWords(zoneStanding(standings.map(step), count));
    expect(open(2, 'done', 'held')).toBe('1 of 2 steps done, held, 2 punch items open');
    expect(open(1, 'open')).toBe('not begun, 1 punch item open');
    expect(open(1, 'done')).toBe('all steps done, 1 punch item open');
  });
});

it('a patch that is struck is gone, the others stay', () => {
  const zones = [{ zone: 'South', walls: ['a'] }];
  const clocked = [8, 9].reduce((progress, hour) => {
    const at = (minute: string) => `2026-05-04T0${String(hour)}:${minute}:00Z`;
    const started = changeZone(progress, zones, 'South', startClock(at('00')));
    return changeZone(started, zones, 'South', stopClock(at('05')));
  }, NO_PROGRESS);
  const after = changeZone(clocked, zones, 'South', strikeDwell('2026-05-04T08:00:00Z'));
  expect(after.zones[0]?.dwells).toEqual([{ start: '2026-05-04T09:00:00Z', stop: '2026-05-04T09:05:00Z' }]);
});
