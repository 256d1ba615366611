import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDwellClock, type DwellLimits } from '../../src/site/dwell-clock';

const START = 1_000_000;
const limits: DwellLimits = { least: 3, most: 5, dries: 19.3, rinseAt: 4, lastBy: undefined };
const at = (seconds: number, changed: Partial<typeof limits> = {}) =>
  readDwellClock(START, START + seconds * 1000, { ...limits, ...changed });

describe('the dwell clock', () => {
  it('counts minutes from the first stroke', () => {
    expect(at(0)).toMatchObject({ elapsed: 0, phase: 'before least' });
    expect(at(90).elapsed).toBe(1.5);
  });

  it('changes its phase at least and maximum dwell, both still within', () => {
    expect([179, 180, 300, 301].map((seconds) => at(seconds).phase)).toEqual([
      'before least',
      'within',
      'within',
      'over most',
    ]);
  });

  it('says what to do', () => {
    expect(at(60).say).toBe('Let it dwell until 3 min, and keep it wet.');
    expect(at(200).say).toBe('Minimum dwell reached. Start to rinse at 4 min, in the order of applying.');
    expect(at(240).say).toBe('Rinse, in the order of applying; the last spot by 5 min of its own dwell.');
    expect(at(301).say).toBe('Rinse now: the maximum dwell of 5 min is over.');
  });

  it('tells drying before all else', () => {
    expect(at(359, { dries: 6 }).phase).toBe('over most');
    expect(at(360, { dries: 6 }).phase).toBe('dried');
    expect(at(60, { dries: 2 }).say).toContain('it dries after 2 min, before the minimum dwell of 3 min');
    expect(at(1200).phase).toBe('dried');
    expect(at(1e6, { dries: Infinity }).phase).toBe('over most');
  });

  it('asks for mist each time before the cleaner dries, and fears drying only when nobody mists any longer', () => {
    expect(at(60, { dries: 2 }).say).toContain('Mist it at 2 min at the latest, then every 2 min.');
    expect(at(130, { dries: 2 }).say).toContain('Mist it at 4 min at the latest');
    expect(at(250, { dries: 4 }).say).toContain('Mist it at 8 min at the latest, then every 4 min.');
    expect(at(250, { dries: 4 }).phase).toBe('within');
    expect(at(301, { dries: 4 }).phase).toBe('over most');
    // Misted until 5 min, it is dry 4 min later.
    expect([539, 540].map((seconds) => at(seconds, { dries: 4 }).phase)).toEqual(['over most', 'dried']);
    expect(at(60).say).not.toContain('Mist');
  });

  it('tells both starts where walls differ', () => {
    expect(at(250, { rinseAtMost: 4.5 }).say).toBe(
      'Minimum dwell reached. Start to rinse at 4 to 4.5 min, as the steps say of each wall, in the order of applying.',
    );
    expect(at(271, { rinseAtMost: 4.5 }).say).toContain('Rinse, in the order of applying');
  });

  it('lets the last point have its own dwell', () => {
    expect(at(360, { lastBy: 6.9 }).say).toBe(
      'Rinse now: the maximum dwell of 5 min is over where you began; the last spot by 6.9 min on this clock.',
    );
    expect(at(415, { lastBy: 6.9 }).say).toBe('Rinse now: the maximum dwell of 5 min is over.');
  });

  it('says so when the clock of the device was set back', () => {
    expect(at(-1)).toMatchObject({ elapsed: 0, phase: 'set back' });
  });

  it('never goes back to a gentler phase', () => {
    const order = ['before least', 'within', 'over most', 'dried'];
    fc.assert(
      fc.property(fc.nat(3000), fc.nat(3000), fc.integer({ min: 1, max: 60 }), (some, more, dries) => {
        const earlier = order.indexOf(at(some, { dries }).phase);
        expect(order.indexOf(at(some + more, { dries }).phase)).toBeGreaterThanOrEqual(earlier);
      }),
    );
  });
});
