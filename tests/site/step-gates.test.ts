import { describe, expect, it } from 'vitest';
import { stepChecklist } from '../../src/site/step-checklist';
import { standingSteps } from '../../src/site/step-gates';
import type { StepId } from '../../src/site/step';
import { BRICK_OVER_MASKED_BASE, estimated } from './job';

function standing(
  done: StepId[],
  {
    rows = BRICK_OVER_MASKED_BASE,
    factors = [],
    since = {},
  }: { rows?: unknown[][]; factors?: unknown[][]; since?: Partial<Record<StepId, string[]>> } = {},
) {
  const job = estimated(rows, factors);
  const [zone] = job.zones;
  if (!zone) throw new Error('no zone');
  const list = stepChecklist(zone, job.zones, job.factors);
  const records = done.map((step) => ({
    step,
    done: true,
    who: 'R. Mason',
    when: '2026-05-04T08:00:00Z',
    note: '',
    decidedOn: since[step] ?? list.steps.find(({ id }) => id === step)?.decidedOn ?? [],
  }));
  const steps = standingSteps(list, { zone: list.zone, walls: list.walls, records, dwells: [], clock: '' });
  return Object.fromEntries(steps.map(({ step, standing: is, reason }) => [step.id, { is, reason }]));
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
    expect(later['age']).toEqual({ is: 'again', reason: 'New in the workbook since then: S-9. Look again.' });
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
      reason: 'New in the workbook since then: class 2. Look again.',
    });
  });

  it('masked masonry that is washed afterwards asks for its own sample and age', () => {
    const before = standing(['age', 'sample', 'protection'], {
      since: { age: ['S-1'], sample: ['class 2', 'Red clay brick'], protection: ['S-1', 'S-2 masked'] },
    });
    expect(before['age']?.reason).toBe('New in the workbook since then: S-2. Look again.');
    const aged = standing(['age', 'sample', 'protection'], {
      since: { sample: ['class 2', 'Red clay brick'] },
    });
    expect(aged['sample']?.reason).toBe(
      'New in the workbook since then: Limestone with class 1. Look again.',
    );
  });

  it('the workbook holds a gate that was ticked, but takes no other tick away', () => {
    const cold = standing(['age', 'sample', 'protection', 'apply'], { factors: [['weather.air', 30]] });
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
