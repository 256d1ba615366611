import { describe, expect, it } from 'vitest';
import {
  addPunchItem,
  agreedWords,
  agreeOnSample,
  closePunchItem,
  dropSecondClean,
  punchList,
  secondCleansOf,
  type AgreedSample,
  type Inspection,
  type PunchItem,
} from '../../src/site/inspection';

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
      'Accepted by the architect on May 2, 2026, viewed dry from 20 ft in daylight.',
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
    const pictured = { ...streak, photo: 'IMG 12' };
    const shot = addPunchItem(pictured)(NONE);
    expect(punchList(closePunchItem(pictured, closed)(shot))).toEqual([{ ...pictured, closed }]);
    const done = closePunchItem(streak, closed)(both);
    expect(punchList(done)).toEqual([{ ...streak, closed }, other]);
    expect(punchList(closePunchItem(streak, undefined)(done))).toEqual([streak, other]);
  });
});

describe('second cleans that were kept here', () => {
  const clean = { wall: 'S-1', hours: 2.5, why: 'haze below level 1', ...closed };

  it('leave one by one, known by wall and time', () => {
    const other = { ...clean, wall: '' };
    const both: Inspection = { secondCleans: [clean, other] };
    expect(secondCleansOf(NONE)).toEqual([]);
    expect(secondCleansOf(dropSecondClean(clean)(both))).toEqual([other]);
    expect(secondCleansOf(dropSecondClean({ ...clean, when: agreed.when })(both))).toEqual([clean, other]);
  });
});
