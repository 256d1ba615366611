import { describe, expect, it } from 'vitest';
import { readRemembered, rememberedText } from '../../../taskpane/shared/remembered-text';
import { keepFormulas, runReview, type ReviewProgress } from '../../../taskpane/review/run-review';
import { inSlices, type Turns } from '../../../taskpane/shared/slices';
import { MemoryWorkbook, type Contents } from '../../../taskpane/workbook/memory-workbook';
import { evaluate } from '../evaluate';

/** A clock that goes on by a fixed time at every look. */
function ticking(step: number): Turns & { readonly pauses: () => number } {
  let time = 0;
  let pauses = 0;
  return {
    now: () => (time += step),
    pause: () => {
      pauses++;
      return Promise.resolve();
    },
    pauses: () => pauses,
  };
}

function* counting(to: number): Generator<number, string> {
  for (let count = 1; count <= to; count++) yield count;
  return 'done';
}

describe('a long work in slices', () => {
  const never = new AbortController().signal;

  it('pauses when its time is up, and comes to its end', async () => {
    const turns = ticking(4);
    const seen: number[] = [];
    const result = await inSlices(counting(20), turns, never, (step) => seen.push(step));
    expect(result).toBe('done');
    // 16 ms at 4 ms a step are four steps a slice; the first look starts the slice.
    expect(seen).toEqual([4, 8, 12, 16, 20]);
    expect(turns.pauses()).toBe(5);
  });

  it('does one step a slice where a step takes longer than a slice', async () => {
    const turns = ticking(60);
    const seen: number[] = [];
    await inSlices(counting(3), turns, never, (step) => seen.push(step));
    expect(seen).toEqual([1, 2, 3]);
  });

  it('ends early when it is stopped', async () => {
    const stop = new AbortController();
    const seen: number[] = [];
    const result = await inSlices(counting(100), ticking(60), stop.signal, (step) => {
      seen.push(step);
      if (step === 2) stop.abort();
    });
    expect(result).toBeUndefined();
    expect(seen).toEqual([1, 2]);
  });
});

describe('remembered formulas', () => {
  it('come back as they were kept', () => {
    const groups = [['S', '=F(R[0])', '=F(A1)', ['B1', 'B2']]] as const;
    expect(readRemembered(rememberedText(groups))).toEqual(groups);
  });

  it.each([
    undefined,
    '',
    'nonsense',
    '{}',
    '{"formulas":[[1,2]]}',
    '{"formulas":[["S","a","b","B1"]]}',
    'null',
  ])('are none in %j', (text) => {
    expect(readRemembered(text)).toEqual([]);
  });
});

const WALLS = [
  ['Wall', 'Zone', 'Material', 'Area'],
  ['W-1', 'South', 'Red clay brick', 1000],
  ['W-2', 'North', 'Limestone', 300],
];
const tables = [{ name: 'Walls', sheet: 'Walls', address: 'A1:D3' }];
const tape = (row: number) => `=WASH.TAPE(Walls[#All],$A${String(row)})`;
const CONTENTS: Contents = {
  sheets: {
    Walls: WALLS,
    Estimate: [
      ['South', tape(1)],
      ['North', tape(2)],
    ],
  },
  tables,
  evaluate,
};

async function reviewed(workbook: MemoryWorkbook) {
  const progress: ReviewProgress[] = [];
  const review = await runReview({
    port: workbook,
    source: undefined,
    turns: ticking(1),
    signal: new AbortController().signal,
    progress: (now) => progress.push(now),
  });
  if (!review) throw new Error('The review was not stopped.');
  const listed = review.findings
    .filter(({ kind }) => kind !== 'check')
    .map(({ kind, sheet, address }) => `${kind} ${sheet}!${address}`);
  return { review, listed, progress };
}

describe('a review', () => {
  it('of formulas that agree says so, remembers them, and does not have the workbook calculate', async () => {
    const workbook = new MemoryWorkbook(CONTENTS);
    const { review, listed, progress } = await reviewed(workbook);
    expect(review.agree).toBe(2);
    expect(review.remembered).toBe(true);
    expect(listed).toEqual([]);
    expect(progress.map(({ doing }) => doing)).not.toContain('The workbook calculates');
    const kept = readRemembered(await workbook.readPart('formulas'));
    expect(kept.map(([sheet, , formula, cells]) => [sheet, formula, cells])).toEqual([
      ['Estimate', tape(1), ['B1', 'B2']],
    ]);
  });

  it('tells what was out of date from what still differs', async () => {
    const stale = new MemoryWorkbook({ ...CONTENTS, shows: { 'Estimate!B1': 7 } });
    expect((await reviewed(stale)).listed).toEqual(['out of date Estimate!B1']);
    const wrong = new MemoryWorkbook({ ...CONTENTS, evaluate: () => 7 });
    expect((await reviewed(wrong)).listed).toEqual(['differs Estimate!B1', 'differs Estimate!B2']);
  });

  it('lists a typed-over cell again and again, until it is accepted', async () => {
    const workbook = new MemoryWorkbook(CONTENTS);
    await reviewed(workbook);
    workbook.type({ sheet: 'Estimate', address: 'B2' }, 'see plan');
    expect((await reviewed(workbook)).listed).toEqual(['typed over Estimate!B2']);
    const { review, listed } = await reviewed(workbook);
    expect(listed).toEqual(['typed over Estimate!B2']);
    await keepFormulas(workbook, { formulas: review.formulas, followers: [], gone: [] });
    expect((await reviewed(workbook)).listed).toEqual([]);
  });

  it('says where nothing keeps what it remembers', async () => {
    const { review } = await reviewed(new MemoryWorkbook({ ...CONTENTS, keepsParts: false }));
    expect(review.remembered).toBe(false);
  });

  it('checks the walls that were chosen, though no formula reads them', async () => {
    const workbook = new MemoryWorkbook({ sheets: { Walls: WALLS }, tables });
    const stopped = new AbortController();
    const input = {
      port: workbook,
      source: { walls: { table: 'Walls' } },
      turns: ticking(1),
      signal: stopped.signal,
      progress: () => undefined,
    };
    const kinds = (await runReview(input))?.findings.map(({ kind }) => kind) ?? [];
    expect(new Set(kinds)).toEqual(new Set(['check']));
    stopped.abort();
    expect(await runReview(input)).toBeUndefined();
  });

  it('a finding of the checks stands at the cells of its walls, or of its factor', async () => {
    const walls = [
      ['Take-off of the facade'],
      ['Material', 'Mark', 'Area', 'Mortar', 'Residue', 'Openings', 'Opening perimeter', 'Height'],
      ['Red clay brick', 'S-1', 500, 'N', 'light', 0, 0, 10],
      ['Red clay brick', 'S-2', 500, '', 'light', 10, 1, 10],
      ['Red clay brick', 'S-3', 500, '', 'light', 0, 0, 10],
    ];
    const workbook = new MemoryWorkbook({
      sheets: {
        Walls: walls,
        Headings: [['Wall', 'Mark']],
        Rates: [
          ['units', 'US'],
          ['weather.wind', 40],
        ],
      },
    });
    const review = await runReview({
      port: workbook,
      source: {
        walls: { sheet: 'Walls', address: 'A2:H5' },
        factors: { sheet: 'Rates', address: 'A1:B2' },
        headings: { sheet: 'Headings', address: 'A1:B1' },
      },
      turns: ticking(1),
      signal: new AbortController().signal,
      progress: () => undefined,
    });
    const at = (words: string) => {
      const found = review?.findings.find(({ what }) => what.includes(words));
      const more = found?.others?.map(({ address }) => address) ?? [];
      return found && [`${found.sheet}!${found.address}`, ...more];
    };
    expect(at('Mortar is not stated')).toEqual(['Walls!D4', 'D5']);
    expect(at('shorter than that of one round opening')).toEqual(['Walls!G4']);
    // The walls have no column Age: their labels stand for them.
    expect(at('Age is not stated')).toEqual(['Walls!B3', 'B4', 'B5']);
    expect(at('Wind of 40 mph')).toEqual(['Rates!B2']);
  });

  it('takes the stored form of a formula for what it is', async () => {
    const sheets = { Walls: WALLS, Estimate: [['South', '=_xldudf_WASH_TAPE(Walls[#All],$A1)']] };
    const { listed } = await reviewed(new MemoryWorkbook({ sheets, tables }));
    expect(listed).toEqual(['error Estimate!B1']);
  });
});
