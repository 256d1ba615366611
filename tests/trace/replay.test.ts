import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linesOf } from '../../functions/trace';
import { traceNames } from '../../functions/trace-names';
import { answer, readQuestion, type Question } from '../../functions/arguments';
import { addedQuantities, quantityIds } from '../../src/estimate/quantities';
import { WashdownError } from '../../src/quantity/problem';
import { show } from '../../src/quantity/systems';
import { factors as factorTable } from '../../src/rules/factors';
import { explainedByRow } from '../../src/trace/explained';
import { Recorder, type TraceLine } from '../../src/trace/recorder';
import { call, expectSame, lines } from '../properties/call';
import { ownFactors, rangeOf, RUNS, walls as madeWalls } from '../properties/walls';
import { Cells, scalarFunctions, type Shown } from './cells';
import { jobs, mixedSi, mixedUs, noWindow, type Job } from './jobs';
import { once, record, RELATIVE, replay } from './replay';

const questions = new Map<Job, Map<string, Question>>();

/** The lines of TRACE, or the message that it is refused with. */
function traced(job: Job, quantity: string, zone: string, wall = ''): TraceLine[] | string {
  const known = questions.get(job) ?? new Map<string, Question>();
  const question = known.get(zone) ?? readQuestion(job.walls, zone, job.factors, null);
  questions.set(job, known.set(zone, question));
  try {
    return linesOf(quantity, question, wall);
  } catch (error) {
    if (error instanceof WashdownError) return error.message;
    throw error;
  }
}

/** The lines that have a number; where there is no contact window, some have none. */
function numbersAmong(all: readonly TraceLine[]): TraceLine[] {
  return all.filter(({ value }) => !Number.isNaN(value));
}

/** Expects the last line to be the cell, and no lines where the cell shows an error. */
function expectCell(trace: TraceLine[] | string, cell: Shown, what: string): void {
  if (typeof trace === 'string') {
    expect(trace, what).not.toBe('');
    expect(typeof cell, `${what}: TRACE says "${trace}" of the cell ${cell}`).toBe('string');
    return;
  }
  if (typeof cell === 'string') throw new Error(`${what}: TRACE explains a cell that shows "${cell}".`);
  expectSame(trace.at(-1)?.value ?? NaN, cell, RELATIVE, what);
}

const overriddenIn = (job: Job): Set<string> => new Set(job.factors.map(([id]) => String(id)));

/** Expects the lines of the user's own values, and no others, to be marked so. */
function expectMarks(job: Job, trace: readonly TraceLine[], seen: Set<string>): void {
  const own = overriddenIn(job);
  for (const { symbol, rule, kind, expression } of trace) {
    const id = rule.split(':')[0] ?? '';
    const isFactor = expression === '' && factorTable.some((row) => row.id === id);
    if (isFactor) {
      expect(kind === 'override', `${symbol} (${id})`).toBe(own.has(id));
      if (own.has(id)) seen.add(id);
    }
    const [, name, property] = /^(.+), (ceiling|suction|pressure):/.exec(rule) ?? [];
    if (name !== undefined && property !== undefined && expression === '') {
      const code = name === 'House brick' ? name : name.toLowerCase().replaceAll(' ', '-');
      const material = `material.${code}.${property}`;
      expect(kind === 'override', symbol).toBe(own.has(material));
      if (own.has(material)) seen.add(material);
    }
  }
}

describe.each(Object.entries(jobs))('%s', (_, job) => {
  const cellsOfJob = once(() => new Cells(job));

  it('every number of the zones and of the job comes out of its lines, and is the cell', () => {
    const cells = cellsOfJob();
    let compared = 0;
    for (const zone of [...cells.zones, '']) {
      for (const quantity of traceNames.filter((name) => !(name in explainedByRow))) {
        const trace = traced(job, quantity, zone);
        if (typeof trace !== 'string') replay(trace);
        for (const cell of cells.of(quantity, zone)) {
          expectCell(trace, cell, `${quantity} of ${zone || 'the job'}`);
          compared++;
        }
      }
    }
    expect(compared).toBeGreaterThan(cells.zones.length * quantityIds.length);
  });

  it('every number of the wall rows comes out of its lines, and is the cell', () => {
    const cells = cellsOfJob();
    // Of a long job a few rows are asked for, and the next test takes
    // all of them.
    const asked = cells.walls.filter((_, index) => cells.walls.length < 20 || index % 22 === 0);
    for (const wall of asked) {
      for (const quantity of traceNames) {
        const cell = cells.ofWall(quantity, wall);
        if (quantity in explainedByRow) {
          // These stand in no cell; their lines must come out all the same.
          const trace = traced(job, quantity, '', wall);
          if (typeof trace !== 'string') replay(trace);
          continue;
        }
        if (cell === undefined) {
          expect(traced(job, quantity, '', wall)).toMatch(
            /belongs to a zone|price of labor|no such|There is no/,
          );
          continue;
        }
        const trace = traced(job, quantity, '', wall);
        if (typeof trace !== 'string') replay(trace);
        expectCell(trace, cell, `${quantity} of ${wall}`);
      }
    }
  });

  it('all that is taken down comes out of what was taken down before', () => {
    const cells = cellsOfJob();
    for (const zone of cells.zones) replay(numbersAmong(record(job, zone).lines));
    const { lines: all, question, rec } = record(job);
    replay(numbersAmong(all));
    for (const { row, wall } of question.zones.flatMap(({ rows }) => rows)) {
      for (const id of quantityIds) {
        const cell = cells.ofWall(addedQuantities[id].heading.toLowerCase(), wall);
        if (typeof cell !== 'number') continue;
        const last = rec.linesFor(`${id}_r${String(row)}`).at(-1);
        expectSame(last?.value ?? NaN, cell, RELATIVE, `${id} of ${wall}`);
      }
    }
  });
});

describe('a record that is wrong is found out', () => {
  const right = once(() => record(mixedUs, 'Street front').lines);
  const at = (symbol: string, change: Partial<TraceLine>): TraceLine[] =>
    right().map((line) => (line.symbol === symbol ? { ...line, ...change } : line));

  it('where a value is not what its expression gives', () => {
    expect(() => {
      replay(at('water_r2', { expression: 'preWetWater_r2 + mixWater_r2' }));
    }).toThrow('water_r2');
  });

  it('where an expression uses what is not above it', () => {
    expect(() => {
      replay([...right()].reverse());
    }).toThrow('is not defined above');
  });

  it('where a symbol stands twice', () => {
    expect(() => {
      replay([...right(), ...right()]);
    }).toThrow('is defined twice');
  });

  it('where a number is stated that should have been worked out', () => {
    expect(() => {
      replay(at('water_r2', { expression: '' }));
    }).toThrow('without saying how');
  });

  it('where a line lacks its source', () => {
    expect(() => {
      replay(at('flow_r2', { source: '' }));
    }).toThrow('lacks');
  });
});

it('each number that TRACE can explain is compared with a cell', () => {
  const cells = new Cells(mixedUs);
  const [zone = ''] = cells.zones;
  const without = traceNames.filter((name) => cells.of(name, zone).length === 0);
  // What belongs to a row or to the whole job stands in the steps and beside the schedule, in no cell of its own.
  const elsewhere = [...Object.keys(explainedByRow), 'mistings', 'days of the job', 'rental days of the job'];
  expect(without.sort()).toEqual(elsewhere.sort());
  expect(traceNames.length).toBeGreaterThan(quantityIds.length);
});

it.each([
  ['US', mixedUs],
  ['SI', mixedSi],
])("the user's own values are marked override in %s units, and nothing else is", (_, job) => {
  const seen = new Set<string>();
  const { zones } = new Cells(job);
  for (const zone of zones) {
    for (const quantity of traceNames) {
      const trace = traced(job, quantity, zone);
      if (typeof trace !== 'string') expectMarks(job, trace, seen);
    }
  }
  const said = [...overriddenIn(job)].filter(
    (id) => id !== 'units' && id !== 'cleaner.class' && !id.endsWith('.pressure'),
  );
  expect(said.filter((id) => !seen.has(id))).toEqual([]);
});

it('a class that the user chose is marked override', () => {
  const trace = traced(mixedSi, 'class', 'Yard (east)');
  expect(trace).not.toBeTypeOf('string');
  expect((trace as TraceLine[]).at(-1)).toMatchObject({ kind: 'override', value: 2 });
  const byNeed = traced(mixedUs, 'class', 'Street front');
  expect((byNeed as TraceLine[]).at(-1)).toMatchObject({ kind: 'assumption' });
});

it('a ceiling that is set by what the rinse runs over says so', () => {
  const ceiling = traced(mixedUs, 'governing', 'Street front') as TraceLine[];
  // Stucco takes class 1, and stands in the porch below.
  expect(ceiling.at(-1)).toMatchObject({ value: 1 });
  expect(ceiling.map(({ symbol }) => symbol)).toContain('ceiling_stucco');
});

it('a measured suction stands in the trace as an input, and residue without a statement as assumed', () => {
  const water = traced(mixedUs, 'water', 'Street front') as TraceLine[];
  // Rows are counted within the range, its headings being row 1.
  expect(water.find(({ symbol }) => symbol === 'ira_r3_given')).toMatchObject({
    value: expect.closeTo(27.5, 9) as number,
    unit: 'g/30in²',
    kind: 'input',
    where: 'A-2',
  });
  const left = (traced(mixedUs, 'class', 'Yard (east)') as TraceLine[]).find(
    ({ symbol }) => symbol === 'left_r9_c0',
  );
  expect(left?.rule).toContain('assumed from brushing');
});

it('a zone without a contact window is refused with its reason', () => {
  expect(traced(noWindow, 'labor-hours', 'Street front')).toContain('no contact window');
  expect(traced(noWindow, 'labor-hours', '')).toContain('no contact window');
  // The masking of the zone does not need the window.
  expect(traced(noWindow, 'masking', 'Street front')).not.toBeTypeOf('string');
});

it('the worksheet function spills the lines under their headings', () => {
  const { walls, factors } = mixedUs;
  const spilled = lines('TRACE', 'water', walls, 'Atrium', factors);
  const own = traced(mixedUs, 'water', 'Atrium') as TraceLine[];
  expect(spilled.map((line) => [line['Symbol'], line['Value'], line['Kind of source']])).toEqual(
    own.map(({ symbol, value, kind }) => [symbol, value, kind]),
  );
  expect(spilled.at(-1)?.['Where']).toBe('Atrium');
});

describe('made walls', () => {
  const made = fc
    .tuple(madeWalls, ownFactors, fc.constantFrom('US', 'SI'))
    .map(([rows, own, units]): Job => ({
      walls: rangeOf(rows),
      // The user's own values are made for US units.
      factors: [['units', units], ...(units === 'US' ? own.map((line) => [...line]) : [])],
    }));

  it('everything taken down comes out, and each number is its cell', () => {
    fc.assert(
      fc.property(made, (job) => {
        const { lines: all, rec, estimate, question } = record(job);
        replay(numbersAmong(all));
        const { system } = question.factors;
        const last = (symbol: string): number => rec.linesFor(symbol).at(-1)?.value ?? NaN;
        const expectLast = (symbol: string, value: number, id: (typeof quantityIds)[number]): void => {
          if (Number.isNaN(value)) expect(last(symbol), symbol).toBeNaN();
          else expectSame(last(symbol), show(value, addedQuantities[id].kind, system), RELATIVE, symbol);
        };
        for (const id of quantityIds) {
          expectLast(id, estimate.totals[id], id);
          estimate.zones.forEach(({ totals }, index) => {
            expectLast(`${id}_z${String(index + 1)}`, totals[id], id);
          });
        }
        answer(question, {
          takeRow: (row, quantities) => {
            for (const id of quantityIds) expectLast(`${id}_r${String(row.row)}`, quantities[id], id);
          },
        });
      }),
      { numRuns: RUNS },
    );
  });

  it('the worksheet function gives the cells of a random zone', () => {
    fc.assert(
      fc.property(made, fc.nat(), (job, pick) => {
        const cells = new Cells(job);
        const zone = cells.zones[pick % cells.zones.length] ?? '';
        for (const quantity of ['water', 'masking', 'labor-hours', 'runoff', 'price', 'class']) {
          const trace = traced(job, quantity, zone);
          if (typeof trace !== 'string') replay(trace);
          for (const cell of cells.of(quantity, zone)) expectCell(trace, cell, `${quantity} of ${zone}`);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('the estimate is the same number for number with a record and without', () => {
    fc.assert(
      fc.property(made, (job) => {
        const question = readQuestion(job.walls, '', job.factors, null);
        const plain = answer(question);
        const recorded = answer(question, { rec: new Recorder(question.factors) });
        // A record is of each row; otherwise one row of each kind stands for all.
        const without = ({ zones, ...job }: typeof plain) => ({
          ...job,
          zones: zones.map((zone) => ({ ...zone, washed: [] })),
        });
        expect(without(recorded)).toEqual(without(plain));
        const ways = ({ zones }: typeof plain) =>
          zones.map(({ washed }) => new Set(washed.map(({ how }) => JSON.stringify(how))));
        expect(ways(recorded)).toEqual(ways(plain));
      }),
      { numRuns: RUNS },
    );
  });
});

describe('names that an expression must not be led astray by', () => {
  const ODD = [
    '@',
    '#',
    '_z1 + 1',
    '$&',
    '$1',
    '__proto__',
    'constructor',
    '=1+1',
    'water',
    'o\'Brien "A"',
    'ä#@',
    '\\',
    '0x10',
  ];

  it.each(ODD)('a zone and a wall called %s', (name) => {
    const job: Job = {
      walls: [
        ['Wall', 'Zone', 'Material', 'Area', 'Residue'],
        [name, name, 'Red clay brick', 100, 'moderate'],
        [`${name} 2`, `${name} 2`, 'Limestone', 50, 'light'],
      ],
      factors: [],
    };
    const cells = new Cells(job);
    expect(cells.zones).toEqual([name, `${name} 2`]);
    for (const zone of cells.zones) {
      const trace = traced(job, 'water', zone) as TraceLine[];
      replay(trace);
      expect(trace.at(-1)?.where).toBe(zone);
      for (const cell of cells.of('water', zone)) expectCell(trace, cell, zone);
    }
    const ofWall = traced(job, 'water', '', name) as TraceLine[];
    replay(ofWall);
    expect(ofWall.at(-1)?.where).toBe(name);
  });

  it('a material is named in words that can be read', () => {
    const symbols = record(mixedUs, 'Street front').lines.map(({ symbol }) => symbol);
    expect(symbols).toEqual(
      expect.arrayContaining(['ceiling_red_clay_brick', 'ira_limestone', 'ceiling_granite']),
    );
  });

  it('materials of the user whose codes differ in signs alone keep their own numbers', () => {
    const codes = ['Façade ä', 'Façade ö', 'a-b', 'a_b', 'a.b', '#@', '粘土'];
    const job: Job = {
      walls: [
        ['Wall', 'Material', 'Area', 'Residue'],
        ...codes.map((code, index) => [`W${String(index)}`, code, 40 + index, 'moderate']),
      ],
      factors: codes.flatMap((code, index) => [
        [`material.${code}.ceiling`, 2],
        [`material.${code}.suction`, 5 + index],
        [`material.${code}.pressure`, 500],
      ]),
    };
    const taken = record(job);
    replay(taken.lines);
    const suctions = taken.lines.filter(({ unit, expression }) => unit === 'g/30in²' && expression === '');
    expect(suctions.map(({ value }) => value)).toHaveLength(codes.length);
    suctions.forEach(({ value }, index) => {
      expect(value).toBeCloseTo(5 + index, 9);
    });
    expect(call('WATER', job.walls, null, job.factors)).toBeTypeOf('number');
  });
});

it('every function of one number is explained under a name that TRACE takes', () => {
  expect(Object.keys(scalarFunctions).filter((name) => !traceNames.includes(name))).toEqual([]);
});
