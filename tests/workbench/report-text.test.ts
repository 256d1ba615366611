import { describe, expect, it } from 'vitest';
import { reportText } from '../../workbench/estimate/report-text';

const HEAD = ['Zone', 'Ceiling', 'Class', 'Washed area (ft²)', 'Crew-hours', 'Labor-hours', 'Price'];

describe('the estimate in words', () => {
  it('writes money with its cents and a class with its words, and adds the zones up', () => {
    const text = reportText(
      [[HEAD, ['South', 1, 0, 1200, 10, 40, 12663.5], ['North', 3, 2, 800.25, 5.125, 20.5, 1000]]],
      [{ sheet: 'Bid', cell: 'B2', formula: '=WASH.BIDPRICE(A1)', value: 13663.5, unit: 'money' }],
    );
    expect(text).toContain('  Ceiling            class 1 (neutral detergent)\n');
    expect(text).toContain('  Class              class 0 (clear water)\n');
    expect(text).toContain('  Price              12,663.50\n');
    // 1,200 + 800.25; 10 + 5.125; 40 + 20.5; 12,663.50 + 1,000.
    expect(text).toContain(
      [
        'Whole job',
        '  Washed area (ft²)  2,000.25',
        '  Crew-hours         15.13',
        '  Labor-hours        60.5',
        '  Price              13,663.50',
      ].join('\n'),
    );
    expect(text).toContain('      13,663.50');
    expect(text).not.toContain('money');
  });

  it('has the two numbers that an estimator checks first, of each zone and of the job', () => {
    const head = [...HEAD, 'Area per labor-hour (ft²/labor-h)', 'Price per area (per ft²)'];
    const text = reportText(
      [[head, ['South', 1, 0, 1200, 10, 40, 6000, 30, 5], ['North', 3, 2, 800, 5, 10, 3200, 80, 4]]],
      [],
    );
    expect(text).toContain('  Price per area (per ft²)           5.00\n');
    const [, job] = text.split('Whole job\n');
    // 2,000 / 50; 9,200 / 2,000.
    expect(job).toContain(
      '  Area per labor-hour (ft²/labor-h)  40\n  Price per area (per ft²)           4.60\n',
    );
  });

  it('has no sum where a zone has no value, but its reason', () => {
    const error = { error: '#VALUE!', message: 'Wall A has no contact window.' } as const;
    const text = reportText(
      [
        [
          ['Zone', 'Price'],
          ['South', error],
          ['North', 5],
        ],
      ],
      [],
    );
    expect(text).toContain('Whole job\n  Price  #VALUE! (Wall A has no contact window.)');
  });

  it('adds up nothing where there is one zone', () => {
    expect(
      reportText(
        [
          [
            ['Zone', 'Price'],
            ['South', 5],
          ],
        ],
        [],
      ),
    ).not.toContain('Whole job');
  });
});
