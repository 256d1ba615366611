import { describe, expect, it } from 'vitest';
import { call, number, refusal } from './call';

const walls = [
  ['Wall', 'Material', 'Area', 'Height'],
  ['A', 'Red clay brick', 1000, 10],
];

describe('the part of a quantity', () => {
  it.each([
    ['WATER', 'prewet', ['Pre-wet', 'PRE WET', ' prewet ', [['prewet']]]],
    ['CREWHOURS', 'setup', ['Set-up', 'set up']],
    ['LABORHOURS', 'reclean', ['Re-clean', 're clean']],
  ])('%s "%s" may be typed as %j', (name, plain, others) => {
    const worked = number(name, walls, null, null, plain);
    expect(worked).toBeLessThan(number(name, walls));
    for (const other of others) expect(number(name, walls, null, null, other)).toBe(worked);
  });

  it.each([[undefined], [null], [''], [' '], [0], [[['']]]])('left out as %j is the whole', (part) => {
    expect(number('WATER', walls, null, null, part)).toBe(number('WATER', walls));
  });

  it('that is not known is refused with the parts that are', () => {
    expect(refusal(() => call('WATER', walls, null, null, 'rinze'))).toEqual({
      type: 'input',
      message:
        'The part "rinze" is not known. Accepted: prewet, below, mist, mix, rinse, reclean, or empty for the whole. Did you mean rinse?',
    });
    expect(refusal(() => call('CREWHOURS', walls, null, null, 'rinze')).message).toMatch(
      /Accepted: scrape, mask, prewet, .*, setup, or empty for the whole\. Did you mean rinse\?$/,
    );
  });

  it.each<[unknown, string]>([
    [true, 'The part cannot be TRUE. Accepted: a name, or empty.'],
    ['#N/A', 'The part cannot be the error #N/A. Accepted: a name, or empty.'],
    [[['mix', 'rinse']], 'The part must be one cell, not a range.'],
  ])('cannot be %j', (part, message) => {
    expect(refusal(() => call('WATER', walls, null, null, part))).toEqual({ type: 'input', message });
  });
});

describe('the rate of the labor-hours', () => {
  it.each(['US', 'SI'])('is the washed area by the hours, in %s', (units) => {
    const factors = [['units', units]];
    const rate = number('LABORHOURS', walls, null, factors, 'rate');
    expect(rate * number('LABORHOURS', walls, null, factors)).toBeCloseTo(1000, 6);
  });

  it('is refused where no masonry is washed', () => {
    const glass = [
      ['Wall', 'Material', 'Area'],
      ['A', 'Plain glass', 100],
    ];
    expect(refusal(() => call('LABORHOURS', glass, null, null, 'rate'))).toEqual({
      type: 'nothing',
      message: 'Nothing is washed here, so there is no area per labor-hour.',
    });
  });
});

describe('the arguments in order', () => {
  it.each(['MASKING', 'TAPE', 'CLEANER', 'CLASS', 'GOVERNING', 'GOVERNOR', 'SCHEDULE', 'WALLROWS'])(
    '%s takes headings fourth',
    (name) => {
      const theirs = [
        ['Face', 'Made of', 'Gross', 'High'],
        ['A', 'Red clay brick', 1000, 10],
      ];
      const mapping = [
        ['Wall', 'Face'],
        ['Material', 'Made of'],
        ['Area', 'Gross'],
        ['Height', 'High'],
      ];
      expect(call(name, theirs, null, null, mapping)).toEqual(call(name, walls));
    },
  );

  it.each(['WATER', 'CREWHOURS', 'LABORHOURS'])('%s takes headings fifth, behind the part', (name) => {
    const theirs = [
      ['Face', 'Material', 'Area', 'Height'],
      ['A', 'Red clay brick', 1000, 10],
    ];
    expect(number(name, theirs, null, null, 'rinse', [['Wall', 'Face']])).toBe(
      number(name, walls, null, null, 'rinse'),
    );
  });

  it('may be followed by what the host adds', () => {
    const invocation = { address: 'Sheet1!A1', functionName: 'WATER' };
    expect(number('WATER', walls, null, null, null, null, invocation)).toBe(number('WATER', walls));
  });
});
