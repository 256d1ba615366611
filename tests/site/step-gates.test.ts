import { describe, expect, it } from 'vitest';
import type { PunchItem } from '../../src/site/inspection';
import { stepChecklist } from '../../src/site/step-checklist';
import { standingSteps } from '../../src/site/step-gates';
import type { StepId } from '../../src/site/step';
import { BRICK_OVER_MASKED_BASE, estimated } from './job';

const SAMPLED = [['sample.area', 20]];
const NOON = Date.parse('2026-05-04T12:00:00Z');

function standing(
  done: StepId[],
  {
    rows = BRICK_OVER_MASKED_BASE,
    factors = SAMPLED,
    since = {},
    overruled = {},
    punch = [],
    now = NOON,
  }: {
    rows?: unknown[][];
    factors?: unknown[][];
    since?: Partial<Record<StepId, string[]>>;
    /** The condition that was overruled, by step. */
    overruled?: Partial<Record<StepId, string>>;
    punch?: PunchItem[];
    now?: number;
  } = {},
) {
  const job = estimated(rows, factors);
  const [zone] = job.zones;
  if (!zone) throw new Error('no zone');
  const list = stepChecklist(zone, job.zones, job.factors);
  const records = [...new Set([...done, ...(Object.keys(overruled) as StepId[])])].map((step) => ({
    step,
    done: done.includes(step),
    who: 'R. Mason',
    when: '2026-05-04T08:00:00Z',
    note: '',
    decidedOn: since[step] ?? list.steps.find(({ id }) => id === step)?.decidedOn ?? [],
    ...(overruled[step] === undefined
      ? {}
      : {
          overruled: { hold: overruled[step], who: 'A. Signer', when: '2026-05-04T08:00:00Z', why: 'seen' },
        }),
  }));
  const steps = standingSteps(
    list,
    { zone: list.zone, walls: list.walls, records, dwells: [], clock: '', punch },
    { now, timeOf: Date.parse, timeText: (time) => new Date(time).toISOString().slice(0, 16) },
  );
  return Object.fromEntries(
    steps.map(({ step, standing: is, reason, condition }) => [
      step.id,
      { is, reason, ...(condition === '' ? {} : { condition }) },
    ]),
  );
}

describe('gates', () => {
  it('open one after the other', () => {
    expect(standing([])['age']?.is).toBe('open');
    expect(standing([])['sample']).toEqual({ is: 'held', reason: 'Waits for "Age of the wall".' });
    expect(standing([])['clear']).toEqual({ is: 'held', reason: 'Waits for "Age of the wall".' });
    const aged = standing(['age']);
    expect([aged['age']?.is, aged['sample']?.is]).toEqual(['done', 'open']);
    expect(aged['rinse']?.reason).toBe('Waits for "Sample area".');
    expect(standing(['age', 'sample'])['scrape']?.reason).toBe('Waits for "Protection up".');
  });

  it('behind the last gate every step is open', () => {
    const passed = standing(['age', 'sample', 'protection']);
    const rest = ['scrape', 'pre-wet', 'mix', 'apply', 'scrub', 'dwell', 'rinse', 'later-1', 'clear', 'look'];
    expect(rest.map((id) => passed[id]?.is)).toEqual(rest.map(() => 'open'));
  });

  it('a gate taken back holds what is not done yet, and forgets nothing', () => {
    const back = standing(['sample', 'protection', 'scrape']);
    expect(back['scrape']?.is).toBe('done');
    expect(back['rinse']).toEqual({ is: 'held', reason: 'Waits for "Age of the wall".' });
  });

  it('a wall that came later asks for age and protection again', () => {
    const later = standing(['age', 'sample', 'protection'], {
      rows: [...BRICK_OVER_MASKED_BASE, ['S-9', ...(BRICK_OVER_MASKED_BASE[0] ?? []).slice(1)]],
      since: { age: ['S-1', 'S-2'], protection: ['S-1', 'S-2 masked'] },
    });
    expect(later['age']).toEqual({
      is: 'again',
      reason: 'New in the workbook since then: S-9. Check again.',
    });
    expect(later['sample']?.is).toBe('done');
    expect(later['protection']?.is).toBe('held');
    expect(later['scrape']?.reason).toBe('Waits for "Age of the wall".');
  });

  it('another class asks for another sample, another mask for other protection', () => {
    const passed = {
      age: ['S-1', 'S-2'],
      sample: ['class 1', 'Red clay brick', 'Limestone with class 1'],
      protection: ['S-1', 'S-2'],
    };
    const later = standing(['age', 'sample', 'protection'], { since: passed });
    expect(later['sample']).toEqual({
      is: 'again',
      reason: 'New in the workbook since then: class 2. Check again.',
    });
  });

  it('masked masonry that is washed afterwards asks for its own sample and age', () => {
    const before = standing(['age', 'sample', 'protection'], {
      since: { age: ['S-1'], sample: ['class 2', 'Red clay brick'], protection: ['S-1', 'S-2 masked'] },
    });
    expect(before['age']?.reason).toBe('New in the workbook since then: S-2. Check again.');
    const aged = standing(['age', 'sample', 'protection'], {
      since: { sample: ['class 2', 'Red clay brick'] },
    });
    expect(aged['sample']?.reason).toBe(
      'New in the workbook since then: Limestone with class 1. Check again.',
    );
  });

  it('the workbook holds a gate that was ticked, but takes no other tick away', () => {
    const cold = standing(['age', 'sample', 'protection', 'apply'], {
      factors: [...SAMPLED, ['weather.air', 30]],
    });
    expect(cold['mix']?.is).toBe('held');
    expect(cold['mix']?.reason).toContain('Too cold');
    expect(cold['apply']?.is).toBe('done');
    expect(cold['rinse']?.is).toBe('open');
    const young = (BRICK_OVER_MASKED_BASE[0] ?? []).map((cell, index) => (index === 11 ? 2 : cell));
    const held = standing(['age'], { rows: [young] });
    expect(held['age']?.is).toBe('held');
    expect(held['sample']?.reason).toBe('Waits for "Age of the wall".');
  });
});

describe('conditions', () => {
  const unsampled = { factors: [] as unknown[][] };
  const hold = 'Too early: wait 7 days from 2026-05-04T08:00:00Z.';

  it('a sample that the workbook does not state waits for its own wash, then 7 days from that tick', () => {
    const none = standing(['age'], unsampled);
    expect(none['sample-wash']).toEqual({ is: 'open', reason: '' });
    expect(none['sample']).toMatchObject({ is: 'held', reason: 'Waits for "Sample washed".' });
    expect(none['protection']?.reason).toBe('Waits for "Sample area".');
    const washed = (now: string) =>
      standing(['age', 'sample-wash'], { ...unsampled, now: Date.parse(now) })['sample'];
    expect(washed('2026-05-11T07:59:59Z')).toMatchObject({
      is: 'held',
      reason: 'Too early: wait until 2026-05-11T08:00.',
    });
    expect(washed('2026-05-11T08:00:00Z')?.is).toBe('open');
  });

  it('a wait of no days holds nothing', () => {
    expect(standing(['age'], { factors: [['sample.wait', 0]] })['sample']?.is).toBe('open');
  });

  it('one that was overruled lets the step go on; another one, or a shorter wait, is not overruled with it', () => {
    const at = (overruled: string) =>
      standing(['age', 'sample-wash'], { ...unsampled, overruled: { sample: overruled } })['sample']?.is;
    expect([at(hold), at(hold.replace('7 days', '6 days')), at('Waits for "Sample washed".')]).toEqual([
      'open',
      'held',
      'held',
    ]);
  });

  it('of age and of weather may be overruled, one by one; an error of the workbook may not', () => {
    const young = (BRICK_OVER_MASKED_BASE[0] ?? []).map((cell, index) => (index === 11 ? 2 : cell));
    const tooYoung =
      'Too young: S-1. Wait until they are 7 days old, then enter the new age in the Age column.';
    const aged = standing(['age'], { rows: [young], overruled: { age: tooYoung } });
    expect([aged['age']?.is, aged['sample']?.is]).toEqual(['done', 'open']);
    // With a wall more that is too young, it is another condition.
    const more = standing(['age'], {
      rows: [young, ['S-9', ...young.slice(1)]],
      overruled: { age: tooYoung },
    });
    expect(more['age']?.is).toBe('held');
    const passed: StepId[] = ['age', 'sample', 'protection'];
    const hot = { factors: [...SAMPLED, ['weather.surface', 120]] };
    const reason = standing(passed, hot)['apply']?.reason ?? '';
    expect(reason).toContain('Too hot');
    const over = standing(passed, { ...hot, overruled: { apply: reason } });
    expect([over['apply']?.is, over['mix']?.is]).toEqual(['open', 'held']);
    const unwashable = { factors: [...SAMPLED, ['rate.apply', 1], ['cleaner.class', 2]] };
    const finding = standing(passed, unwashable)['apply']?.reason ?? '';
    expect(finding).toContain('no contact window');
    expect(standing(passed, { ...unwashable, overruled: { apply: finding } })['apply']?.is).toBe('held');
  });
});

describe('the sign-off of a zone', () => {
  const passed: StepId[] = ['age', 'sample', 'protection'];
  const found = { who: 'R. Mason', when: '2026-05-04T09:00:00Z' };
  const streak: PunchItem = { wall: 'S-1', what: 'streak below the sill', ...found };
  const tape: PunchItem = { wall: '', what: 'tape left', ...found };
  const closed = { who: 'A. Other', when: '2026-05-04T10:00:00Z' };
  const walls = ['S-1', 'S-2'];
  const look = (punch: PunchItem[], more: Parameters<typeof standing>[1] = {}, done: StepId[] = []) =>
    standing([...passed, ...done], { punch, ...more })['look'];

  it('is held by open items, each named with its wall; closed ones hold nothing', () => {
    expect(look([])?.is).toBe('open');
    expect(look([streak, tape])).toMatchObject({
      is: 'held',
      reason:
        'Open on the punch list: S-1: streak below the sill; the whole zone: tape left. Close what is done first.',
    });
    expect(look([{ ...streak, closed }, tape])?.reason).toBe(
      'Open on the punch list: the whole zone: tape left. Close what is done first.',
    );
    expect(look([{ ...streak, closed }])?.is).toBe('open');
  });

  it('a long list names twelve and counts the others', () => {
    const many = Array.from({ length: 14 }, (_, index) => ({ ...streak, what: `spot ${String(index)}` }));
    expect(look(many)?.reason).toContain('S-1: spot 11 and 2 more.');
  });

  it('may be given over open items by whoever signs for these, and not for one found later', () => {
    const condition = look([streak])?.condition ?? '';
    expect(condition).toBe(
      'Open on the punch list: S-1: streak below the sill (found 2026-05-04T09:00:00Z).',
    );
    const signed = { overruled: { look: condition } };
    expect(look([streak], signed)?.is).toBe('open');
    expect(look([streak, tape], signed)?.is).toBe('held');
    const since = { look: [...walls, 'S-1: streak below the sill'] };
    expect(look([streak], { ...signed, since }, ['look'])?.is).toBe('done');
  });

  it('is taken back by what is found later, and given again by another look', () => {
    const since = { look: walls };
    expect(look([], { since }, ['look'])?.is).toBe('done');
    expect(look([streak], { since }, ['look'])?.is).toBe('held');
    expect(look([{ ...streak, closed }], { since }, ['look'])).toEqual({
      is: 'again',
      reason: 'New in the workbook since then: S-1: streak below the sill. Check again.',
    });
    // The same words found twice are two items.
    const named = { look: [...walls, 'S-1: streak below the sill'] };
    const twice = [
      { ...streak, closed },
      { ...streak, when: closed.when, closed },
    ];
    expect(look(twice, { since: named }, ['look'])?.reason).toContain('S-1: streak below the sill (2)');
    expect(look([], { since: { look: ['S-1'] } }, ['look'])?.reason).toContain('since then: S-2.');
  });

  it('waits for the gates before it whatever is open', () => {
    expect(standing([], { punch: [streak] })['look']?.reason).toBe('Waits for "Age of the wall".');
  });
});
