import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { progressText, readProgress } from '../../src/site/progress-text';
import { stepIds } from '../../src/site/step';

const time = fc
  .date({ min: new Date(0), max: new Date('2100-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString());
const signed = { who: fc.string(), when: time };
const hours = fc.double({ min: 0.25, max: 99, noNaN: true });
const inspection = {
  agreed: fc.record({
    ...{ approvedBy: fc.string(), on: fc.string(), distance: fc.string(), light: fc.string() },
    dry: fc.boolean(),
    ...signed,
  }),
  punch: fc.array(
    fc.record(
      { wall: fc.string(), what: fc.string(), photo: fc.string(), ...signed, closed: fc.record(signed) },
      { requiredKeys: ['wall', 'what', 'who', 'when'] },
    ),
  ),
  secondCleans: fc.array(fc.record({ wall: fc.string(), hours, why: fc.string(), ...signed })),
};
const progress = fc.record({
  zones: fc.array(
    fc.record(
      {
        zone: fc.string(),
        walls: fc.array(fc.string()),
        records: fc.array(
          fc.record(
            {
              step: fc.constantFrom(...stepIds),
              done: fc.boolean(),
              who: fc.string({ unit: 'grapheme' }),
              when: time,
              note: fc.string({ unit: 'grapheme' }),
              decidedOn: fc.array(fc.string()),
              overruled: fc.record({
                hold: fc.string(),
                who: fc.string({ unit: 'grapheme' }),
                when: time,
                why: fc.string({ unit: 'grapheme' }),
              }),
            },
            { requiredKeys: ['step', 'done', 'who', 'when', 'note', 'decidedOn'] },
          ),
        ),
        dwells: fc.array(fc.record({ start: time, stop: time })),
        clock: fc.oneof(fc.constant(''), time),
        ...inspection,
      },
      { requiredKeys: ['zone', 'walls', 'records', 'dwells', 'clock'] },
    ),
  ),
});

const zone = { zone: 'S', walls: ['a'], records: [], dwells: [], clock: '' };
const record = { step: 'age', done: true, who: 'R', when: '2026-05-04T08:00:00Z', note: '', decidedOn: [] };
const text = (changed: object) => JSON.stringify({ form: 1, zones: [{ ...zone, ...changed }] });

describe('the text of the progress', () => {
  it('reads back what was written', () => {
    fc.assert(
      fc.property(progress, (some) => {
        expect(readProgress(progressText(some))).toEqual(some);
      }),
    );
  });

  it('kept before an inspection was known holds none, and is written back the same', () => {
    const before = text({});
    const read = readProgress(before);
    expect(read.zones[0]).toEqual(zone);
    expect(progressText(read)).toBe(before);
  });

  it.each([
    ['', 'it is not JSON text'],
    ['{"form":1,"zones":[', 'it is not JSON text'],
    ['[]', 'the whole is not an object'],
    ['{"zones":[]}', 'its form is null, this version reads 1'],
    ['{"form":2,"zones":[]}', 'its form is 2, this version reads 1'],
    ['{"form":1}', 'zones is not a list'],
    ['{"form":1,"zones":[null]}', 'zone 1 is not an object'],
    [text({ zone: 7 }), 'zone 1, zone is not text'],
    [text({ walls: ['a', 1] }), 'zone 1, walls 2 is not text'],
    [text({ clock: 'noon' }), 'zone 1, clock is not a date and time: "noon"'],
    [text({ dwells: [{ start: '2026-05-04T08:00:00Z' }] }), 'zone 1, dwell 1, stop is not text'],
    [text({ records: [{ ...record, step: 'polish' }] }), 'zone 1, record 1 has the step "polish"'],
    [text({ records: [{ ...record, done: 'yes' }] }), 'zone 1, record 1, done is neither true nor false'],
    [
      text({ records: [{ ...record, overruled: { hold: 'Too cold', who: 'A', when: record.when } }] }),
      'zone 1, record 1, overruled, why is not text',
    ],
    [
      text({ records: [{ ...record, when: '4 May' }] }),
      'zone 1, record 1, when is not a date and time: "4 May"',
    ],
    [text({ agreed: { approvedBy: 'the architect' } }), 'zone 1, sample, on is not text'],
    [text({ punch: {} }), 'zone 1, punch list is not a list'],
    [text({ punch: [{ wall: 'a', what: 7 }] }), 'zone 1, punch list 1, what is not text'],
    [text({ punch: [{ wall: 'a', what: 'b', photo: 7 }] }), 'zone 1, punch list 1, photo is not text'],
    [
      text({ secondCleans: [{ wall: 'a', hours: '2', why: '', who: '', when: '' }] }),
      'zone 1, second clean 1, hours is not a number above 0',
    ],
  ])('refuses %s', (bad, why) => {
    expect(() => readProgress(bad)).toThrow(`The progress saved in this workbook cannot be read: ${why}.`);
  });
});
