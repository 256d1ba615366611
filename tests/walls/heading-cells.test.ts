import { describe, expect, it } from 'vitest';
import { call, number, refusal } from '../functions/call';

const ours = ['Wall', 'Material', 'Area', 'Openings'];
const wall = ['South', 'Limestone', 40, 12];
// 12 ft2 of openings, with half a foot of lap along the edge of their square.
const MASKING = 12 + 4 * Math.sqrt(12) * 0.5;
const refused = (walls: unknown, headings?: unknown): { type: string; message: string } =>
  refusal(() => call('MASKING', walls, null, null, headings));

describe('the range of walls', () => {
  it('is a range in every row', () => {
    expect(refused([ours, wall, 'no row']).message).toBe(
      'The walls must be a range whose first row is its headings.',
    );
  });

  it('offers texts alone as the nearest headings, whatever else stands in the first row', () => {
    const { type, message } = refused([['Wal', 12, true, '#REF!', 'Area'], wall]);
    expect(type).toBe('input');
    expect(message).toContain('Did you mean Wal, Area? One more problem was found.');
  });
});

describe('the range of headings', () => {
  const theirs = [['Wall', 'Material', 'Net face', 'Openings'], wall];

  it('has two columns in every row', () => {
    expect(refused(theirs, [['Area', 'Net face'], ['Zone']]).message).toBe(
      'The headings must be a range of two columns: our column, your heading.',
    );
  });

  it('passes over a row with one side blank', () => {
    const headings = [
      ['Area', 'Net face'],
      ['', 'Openings'],
      ['Zone', ''],
    ];
    expect(number('MASKING', theirs, null, null, headings)).toBeCloseTo(MASKING, 9);
  });

  it.each([
    [0],
    [''],
    [null],
    [[[null, 0]]],
    [
      [
        ['', ''],
        [0, 0],
      ],
    ],
  ])('that is blank is none: %j', (blank) => {
    const plain = [ours, wall];
    expect(number('MASKING', plain, null, null, blank)).toBe(number('MASKING', plain));
  });

  it('passes over blanks that the host hands over as 0', () => {
    const headings = [
      ['Area', 'Net face'],
      [0, 0],
      [0, 'Openings'],
      ['Zone', 0],
    ];
    expect(number('MASKING', theirs, null, null, headings)).toBeCloseTo(MASKING, 9);
  });

  it('may have a header in its first row, and there alone', () => {
    const header = ['our column', 'your heading'];
    const area = ['Area', 'Net face'];
    expect(number('MASKING', theirs, null, null, [header, area])).toBeCloseTo(MASKING, 9);
    expect(refused(theirs, [area, header]).message).toMatch(
      /^Row 2, column our column: "our column" cannot be used\. Accepted: one of Wall, Zone, /,
    );
  });

  it('names our column by a text', () => {
    expect(
      refused(theirs, [
        ['Area', 'Net face'],
        [5, 'Openings'],
      ]).message,
    ).toMatch(/^Row 2, column our column: 5 cannot be used\. Accepted: one of Wall, Zone, /);
  });

  it('has no value as a heading that cannot be read', () => {
    expect(refused(theirs, [['Area', NaN]]).message).toBe(
      'Row 1, column your heading: NaN cannot be used. Accepted: the text of a heading.',
    );
  });
});
