import { describe, expect, it } from 'vitest';
import { afterCalculating } from '../../../src/review/audit/out-of-date';
import { audit, type AuditInput, type AuditReport } from '../../../src/review/audit/audit';
import { groupFormulas } from '../../../src/review/audit/remembered';
import { reviewRows } from '../../../src/review/audit/review-sheet';
import { book, smallFunctions, WALLS, type Cell } from './book';

function ran(input: Omit<AuditInput, 'functionCalled' | 'remembered'> & Partial<AuditInput>): {
  report: AuditReport;
  steps: { done: number; total: number }[];
  runs: string[];
} {
  const { functionCalled, runs } = smallFunctions();
  const steps = [];
  const work = audit({ functionCalled, remembered: [], ...input });
  for (;;) {
    const step = work.next();
    if (step.done) return { report: step.value, steps, runs };
    steps.push(step.value);
  }
}

const area = (row: number, shows: Cell): Cell => ({
  formula: `=WASH.AREA(Walls[#All],$A${String(row)})`,
  shows: shows as string | number,
});

function estimate(rows: readonly (readonly Cell[])[]) {
  return book({ ...WALLS.sheets, Estimate: rows }, [WALLS.table]);
}

const found = ({ findings }: AuditReport) =>
  findings
    .filter(({ kind }) => kind !== 'check')
    .map(({ kind, sheet, address, what }) => `${kind} ${sheet}!${address} ${what}`);

describe('an audit', () => {
  it('finds nothing to say of formulas that show what they give', () => {
    const { report } = ran({
      book: estimate([
        ['North', area(1, 103)],
        ['South', area(2, 20)],
      ]),
    });
    expect(report.formulas).toHaveLength(2);
    expect(report.agree).toBe(2);
    expect(found(report)).toEqual([]);
  });

  it('lets a difference beyond the 15th digit pass, and no larger one', () => {
    const third = { formula: '=WASH.AREA(Walls[#All])/3', shows: 41.0000000000001 };
    const off = { formula: '=WASH.AREA(Walls[#All])/3', shows: 41.00001 };
    expect(found(ran({ book: estimate([[third], [off]]) }).report)).toEqual([
      'differs Estimate!A2 Shows 41.00001; the formula gives 41.',
    ]);
  });

  it('lists a difference, an error with its message, and formulas that were never worked out', () => {
    const cells = estimate([
      ['North', area(1, 99)],
      ['East', area(2, '#N/A')],
      ['South', area(3, '#NAME?')],
      ['South', { formula: '=_xldudf_WASH_AREA(Walls[#All],$A4)', shows: '' }],
      ['South', { formula: '=WASH.AREA(Walls[#All],$A5)', shows: '#BUSY!' }],
      ['South', { formula: '=WASH.AREA(Walls[#All],$A6)', shows: '#VALUE!' }],
    ]);
    expect(found(ran({ book: cells }).report)).toEqual([
      'differs Estimate!B1 Shows 99; the formula gives 103.',
      'differs Estimate!B6 Shows #VALUE!; the formula gives 20.',
      'out of date Estimate!B4 Shows nothing; the formula gives 20.',
      'out of date Estimate!B5 Shows #BUSY!; the formula gives 20.',
      'error Estimate!B2 Shows #N/A (No wall is in the zone "East".).',
      'error Estimate!B3 Shows #NAME?; the formula gives 20.',
    ]);
  });

  it('lists what it cannot follow, with the reason and the formula', () => {
    const formula = '=_xldudf_WASH_AREA(OFFSET(A1,0,0,4,2))';
    const { report } = ran({ book: estimate([[{ formula, shows: 123 }]]) });
    expect(report.findings[0]).toEqual({
      kind: 'not checked',
      sheet: 'Estimate',
      address: 'A1',
      what: 'Not checked: it uses OFFSET, which Review does not work out.',
      todo: 'Look at this formula yourself.',
      formula: '=WASH.AREA(OFFSET(A1,0,0,4,2))',
    });
  });

  it('finds a number typed between formulas, at their end, and across', () => {
    const cells = estimate([
      ['North', area(1, 103), area(1, 103)],
      ['South', 21, area(2, 20)],
      ['North', area(3, 103), area(3, 103)],
      ['South', area(4, 20), 'see note'],
      ['North', 500, ''],
    ]);
    expect(found(ran({ book: cells }).report)).toEqual([
      'typed over Estimate!B2 Holds 21 where a formula belongs.',
      'typed over Estimate!B5 Holds 500 where a formula belongs.',
    ]);
  });

  it('leaves labels, totals and numbers beside other formulas alone', () => {
    const cells = estimate([
      ['Zone', 'Area', 2026],
      ['North', area(2, 103)],
      ['South', area(3, 20)],
      ['', 1234],
      ['Part two', 'Area'],
      ['South', area(6, 20)],
      ['Sum', { formula: '=SUM(B2:B6)', shows: 143 }],
      ['North', 7],
    ]);
    expect(found(ran({ book: cells }).report)).toEqual([]);
  });

  it('knows what stood in a cell when the workbook was last looked over', () => {
    const before = estimate([
      ['North', area(1, 103)],
      ['South', area(2, 20)],
      ['North', area(3, 103)],
    ]);
    const remembered = groupFormulas(ran({ book: before }).report.formulas);
    expect(remembered).toEqual([
      ['Estimate', '=WASH.AREA(Walls[#All],C1R[0])', '=WASH.AREA(Walls[#All],$A1)', ['B1', 'B2', 'B3']],
    ]);
    const after = estimate([
      ['North', 'about 100'],
      ['South', ''],
      ['North', area(3, 103)],
    ]);
    const { report } = ran({ book: after, remembered });
    expect(found(report)).toEqual([
      'typed over Estimate!B1 Holds "about 100" where a formula belongs.',
      'typed over Estimate!B2 Is blank where a formula stood.',
    ]);
    expect(report.findings[1]?.formula).toBe('=WASH.AREA(Walls[#All],$A2)');
  });

  it('takes formulas that moved down with an inserted row for the same', () => {
    const remembered = groupFormulas(
      ran({
        book: estimate([
          ['North', area(1, 103)],
          ['South', area(2, 20)],
        ]),
      }).report.formulas,
    );
    const after = estimate([['Heading'], ['North', area(2, 103)], ['South', area(3, 20)]]);
    expect(found(ran({ book: after, remembered }).report)).toEqual([]);
  });

  describe('of a formula that fills rows', () => {
    const lines = { formula: '=WASH.LINES(Walls[#All])', shows: 'Zone' };

    it('compares every cell', () => {
      const cells = estimate([
        [lines, 'Area'],
        ['North', 100],
        ['South', 21],
        ['North', 4],
      ]);
      expect(found(ran({ book: cells }).report)).toEqual([
        'differs Estimate!B3 Shows 21; the formula gives 20 (and 1 more cells of its spill).',
      ]);
    });

    it('names the cells in its way', () => {
      const cells = estimate([
        [{ ...lines, shows: '#SPILL!' }, ''],
        ['', ''],
        ['', 'mine'],
        [8, ''],
      ]);
      expect(found(ran({ book: cells }).report)).toEqual([
        'typed over Estimate!B3 Stands in the way of the formula in A1: B3, A4.',
      ]);
    });

    it.each([
      ['it stands in', 'A1:B9'],
      ['it reaches into', 'B3:C9'],
    ])('knows that no formula fills cells of a table, where %s one', (_, address) => {
      const { sheets, table } = WALLS;
      const own = { name: 'Own', sheet: 'Estimate', address, headings: ['a', 'b'] };
      const cells = book(
        {
          ...sheets,
          Estimate: [
            [{ ...lines, shows: '#SPILL!' }, ''],
            ['', ''],
          ],
        },
        [table, own],
      );
      expect(found(ran({ book: cells }).report)).toEqual([
        'error Estimate!A1 Shows #SPILL!: it reaches into the table Own, where no formula may fill other cells.',
      ]);
    });

    it('counts it once where the host hands it over for every cell', () => {
      const again = (shows: string | number): Cell => ({ ...lines, shows });
      const cells = estimate([
        [lines, again('Area')],
        [again('North'), again(100)],
        [again('South'), again(20)],
        [again('North'), again(3)],
      ]);
      const { report } = ran({ book: cells });
      expect(report.formulas).toHaveLength(1);
      expect(found(report)).toEqual([]);
    });
  });

  it('works equal questions out once and yields before every formula', () => {
    const rows = Array.from({ length: 500 }, (_, index): Cell[] => {
      const north = index % 2 === 0;
      return [north ? 'North' : 'South', area(index + 1, north ? 103 : 20)];
    });
    const { report, runs, steps } = ran({ book: estimate(rows) });
    expect(report.agree).toBe(500);
    expect(runs).toEqual(['AREA', 'AREA', 'CHECKS']);
    expect(steps.filter(({ total }) => total === 500).map(({ done }) => done)).toEqual(
      expect.arrayContaining([0, 1, 250, 499, 500]),
    );
  });

  it('runs the checks once for the walls that formulas read, and for walls that none reads', () => {
    const { report } = ran({ book: estimate([[area(9, 123)], [area(9, 123)]]) });
    expect(report.findings).toEqual([
      {
        kind: 'check',
        sheet: 'Walls',
        address: 'A1:B4',
        what: 'all. There are 3 walls. That is known.',
        todo: 'Count them.',
      },
    ]);
    const none = ran({ book: estimate([[1]]), alsoCheck: '=WASH.CHECKS(Walls[#All])' });
    expect(none.report.findings).toHaveLength(1);
    const gone = ran({ book: estimate([[1]]), alsoCheck: '=WASH.CHECKS(Gone[#All])' });
    expect(gone.report.findings).toHaveLength(0);
  });

  it('lists the values of the user in place of starting values', () => {
    const cells = book(
      {
        ...WALLS.sheets,
        Factors: [
          ['Factor', 'Value'],
          ['patch.most', 50],
          ['cleaner.class', 1],
          ['material.limestone.suction', 12],
          // The starting values themselves, and what keeps them.
          ['dwell.most', 5],
          ['mask.lap', 'start'],
          ['Crew and shift', ''],
        ],
        Estimate: [[{ formula: '=WASH.AREA(Walls[#All],,Factors!A1:B7)', shows: '#VALUE!' }]],
      },
      [WALLS.table],
    );
    const overrides = ran({ book: cells }).report.findings.filter(({ kind }) => kind === 'override');
    expect(overrides.map(({ address, what }) => `${address} ${what}`)).toEqual([
      'B2 patch.most is 50 ft²; the starting value is 60 ft².',
      'B3 cleaner.class is 1 (neutral detergent); otherwise the fewest labor-hours decide.',
      'B4 The suction of Limestone is a value of your own.',
    ]);
  });

  it('shows the note beside a value of the user', () => {
    const cells = book(
      {
        ...WALLS.sheets,
        Factors: [
          ['Factor', 'Value', 'Note'],
          ['dwell.least', 2, 'label of 4 March'],
          ['dwell.most', 6, ''],
        ],
        Estimate: [[{ formula: '=WASH.AREA(Walls[#All],,Factors!A1:C3)', shows: '#VALUE!' }]],
      },
      [WALLS.table],
    );
    const overrides = ran({ book: cells }).report.findings.filter(({ kind }) => kind === 'override');
    expect(overrides.map(({ address, what }) => `${address} ${what}`)).toEqual([
      'B2 dwell.least is 2 min; the starting value is 3 min. Its note: label of 4 March',
      'B3 dwell.most is 6 min; the starting value is 5 min.',
    ]);
    expect(overrides[0]?.todo).not.toBe(overrides[1]?.todo);
  });
});

describe('after the workbook calculated', () => {
  const finding = (address: string, kind: 'differs' | 'error' | 'typed over') => ({
    kind,
    sheet: 'Estimate',
    address,
    what: `${address}.`,
    todo: 'Look.',
  });

  it('what differs no more was out of date, what still differs differs', () => {
    const sorted = afterCalculating(
      [finding('B1', 'differs'), finding('B2', 'differs'), finding('B3', 'error')],
      [finding('B2', 'differs'), finding('B4', 'error')],
      { was: '1', is: '1' },
    );
    expect(sorted.map(({ kind, address }) => `${kind} ${address}`)).toEqual([
      'differs B2',
      'out of date B1',
      'error B4',
    ]);
  });

  it('tells what was worked out under other rules from what was typed over', () => {
    const before = [finding('B1', 'differs'), finding('B3', 'typed over')];
    const after = [finding('B3', 'typed over')];
    const kinds = (was: string | undefined) =>
      afterCalculating(before, after, { was, is: '2' }).map(({ kind, address }) => `${kind} ${address}`);
    expect(kinds('1')).toEqual(['typed over B3', 'other rules B1']);
    expect(kinds('2')).toEqual(['typed over B3', 'out of date B1']);
    // A workbook that does not say under which.
    expect(kinds(undefined)).toEqual(['typed over B3', 'out of date B1']);
    expect(afterCalculating(before, after, { was: '1', is: '2' })[1]?.what).toContain(
      'It was worked out under rules 1; these are rules 2.',
    );
  });
});

describe('a review sheet', () => {
  it('has the date, the counts and one row a finding, worst first', () => {
    const { report } = ran({ book: estimate([['North', area(1, 99)]]) });
    const rows = reviewRows(report.findings, { formulas: 1, agree: 0 }, '2026-01-02');
    expect(rows[0]).toEqual(['Washdown review', '2026-01-02']);
    expect(rows[1]).toEqual(['Washdown formulas', 1]);
    expect(rows[4]).toEqual([
      'Kind',
      'Sheet',
      'Cell',
      'What',
      'What to do',
      'Formula',
      'Severity',
      'In error because of it',
    ]);
    expect(rows.slice(5).map(([kind, sheet, address]) => [kind, sheet, address])).toEqual([
      ['Shows something other than its formula gives', 'Estimate', 'B1'],
      ['Checks on the walls', 'Walls', 'A1:B4'],
    ]);
  });
});
