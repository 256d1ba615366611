import { describe, expect, it } from 'vitest';
import { readActuals } from '../../src/actuals/read-actuals';
import {
  addPunchItem,
  agreedWords,
  agreeOnSample,
  closePunchItem,
  punchList,
  recordSecondClean,
  secondCleansOf,
  type AgreedSample,
  type Inspection,
  type PunchItem,
} from '../../src/site/inspection';
import { secondCleanEntries } from '../../src/site/second-clean-entries';
import { column, spill } from '../functions/call';
import { BRICK_OVER_MASKED_BASE, estimated, HEADINGS } from './job';

const NONE: Inspection = {};
const agreed: AgreedSample = {
  approvedBy: 'the architect',
  on: '2026-05-02',
  distance: '20 ft',
  light: 'daylight',
  dry: true,
  who: 'R. Mason',
  when: '2026-05-04T08:00:00.000Z',
};
const streak: PunchItem = {
  wall: 'S-1',
  what: 'streak below the sill',
  who: 'R. Mason',
  when: '2026-05-20T10:00:00.000Z',
};
const closed = { who: 'A. Other', when: '2026-05-21T10:00:00.000Z' };

describe('the sample panel', () => {
  it('is said in words, and is that of the last agreement', () => {
    expect(agreedWords(agreed)).toBe(
      'Accepted by the architect on 2026-05-02, viewed dry from 20 ft in daylight.',
    );
    expect(agreedWords({ ...agreed, dry: false })).toContain('viewed while it was not yet dry');
    const twice = agreeOnSample({ ...agreed, distance: '10 ft' })(agreeOnSample(agreed)(NONE));
    expect(twice.agreed?.distance).toBe('10 ft');
  });
});

describe('the punch list', () => {
  it('starts empty, takes items in order, and each is done or open again by itself', () => {
    expect(punchList(NONE)).toEqual([]);
    const other = { ...streak, wall: '', what: 'tape left on the frames' };
    const both = addPunchItem(other)(addPunchItem(streak)(NONE));
    expect(punchList(both)).toEqual([streak, other]);
    const done = closePunchItem(streak, closed)(both);
    expect(punchList(done)).toEqual([{ ...streak, closed }, other]);
    expect(punchList(closePunchItem(streak, undefined)(done))).toEqual([streak, other]);
  });
});

describe('a second clean', () => {
  const clean = { wall: 'S-1', hours: 2.5, why: 'haze below level 1', ...closed };
  const dayOf = (time: string): string => time.slice(0, 10);
  const { zones } = estimated(BRICK_OVER_MASKED_BASE);

  it('is a row of recorded work that the actuals read as it is', () => {
    const cleans = secondCleansOf(recordSecondClean(clean)(NONE));
    const rows = secondCleanEntries('South', cleans, dayOf);
    expect(rows[1]).toEqual([
      ...['2026-05-21', 'South', 'S-1', 'reclean', '', 2.5, '', ''],
      'Second clean, A. Other: haze below level 1',
    ]);
    const [entry, ...more] = readActuals(
      rows,
      zones.map(({ zone }) => zone),
      'US',
    );
    expect(more).toEqual([]);
    expect(entry).toMatchObject({ hours: 2.5, task: { name: 'reclean' }, wall: { wall: 'S-1' } });
  });

  it('counts among the hours of the job', () => {
    const wall = [HEADINGS, ...BRICK_OVER_MASKED_BASE];
    const rows = secondCleanEntries('South', [clean, { ...clean, wall: '', hours: 1 }], dayOf);
    const spilled = spill('PROGRESS', wall, rows);
    const line = column(spilled, 'Task').indexOf('reclean');
    // 2.5 on one wall and 1 on the zone.
    expect(spilled[line + 1]).toContain(3.5);
  });
});
