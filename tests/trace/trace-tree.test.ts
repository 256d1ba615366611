import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readQuestion } from '../../functions/arguments';
import { tracedInJob } from '../../functions/trace';
import { expressionInWords, nameOf, partName } from '../../src/review/trace-words';
import type { Recorder } from '../../src/trace/recorder';
import { traceNode, type TraceNode } from '../../src/trace/trace-tree';
import { columns, type ColumnId } from '../../src/walls/columns';
import { call, expectSame } from '../properties/call';
import { ownFactors, rangeOf, RUNS, walls as madeWalls } from '../properties/walls';
import { jobs, mixedUs, type Job } from './jobs';
import { compiledOf, record, RELATIVE } from './replay';

function nodeOf(rec: Recorder, symbol: string): TraceNode {
  const node = traceNode(rec, symbol);
  if (!node) throw new Error(`${symbol} is no number of the record.`);
  return node;
}

/** Expects each level to come to the one above it, and each leaf to be what the workbook holds. */
function expectLevels(job: Job): void {
  const [header = [], ...rows] = job.walls;
  const { rec, lines } = record(job);
  // Where there is no contact window, some have no number.
  for (const { symbol } of lines.filter(({ value }) => !Number.isNaN(value))) {
    const { line, made, parts, stated, asStated } = nodeOf(rec, symbol);
    const what = `${symbol} = ${line.expression}`;
    const values = parts.map((part) => nodeOf(rec, part).line.value);
    if (made === 'sum') {
      const sum = values.reduce((total, value) => total + value, 0);
      expectSame(line.value, sum, RELATIVE, what);
    } else if (made === 'expression') {
      const scope = new Map(parts.map((part, place) => [part, values[place] ?? NaN]));
      expectSame(
        line.value,
        compiledOf(line.expression).evaluation.evaluate(scope) as number,
        RELATIVE,
        what,
      );
    } else if (stated?.by === 'cell') {
      const heading = columns[stated.column as ColumnId].name;
      const cell = rows[stated.row - 2]?.[header.indexOf(heading)] ?? '';
      const lies = line.rule.startsWith('Fixtures lie beneath');
      expectSame(asStated.value, lies ? 0 : Number(cell), RELATIVE, `${what}, ${heading} of ${line.where}`);
    } else if (stated?.by === 'factor') {
      const own = job.factors.find(([id]) => id === stated.id)?.[1];
      if (typeof own === 'number') expectSame(asStated.value, own, RELATIVE, what);
    } else if (stated === undefined) {
      // The rule gives the number itself: nothing, or a class.
      if (compiledOf(line.expression).symbols.length > 0 || line.expression === '') expect.fail(what);
    } else if (stated.by !== 'constant') expect.fail(what);
    if (line.source === '' || /_|^$/.test(nameOf(rec, symbol)))
      expect.fail(`${what}: ${nameOf(rec, symbol)}`);
    const words = expressionInWords(rec, line);
    if (/\b\w+_[rz]\d/.test(words)) expect.fail(words);
  }
}

it.each(Object.entries(jobs))(
  '%s: each level comes to the one above, down to cells, factors and constants',
  (_, job) => {
    expectLevels(job);
  },
);

it('each level comes to the one above for any walls', () => {
  fc.assert(
    fc.property(madeWalls, ownFactors, (made, factors) => {
      expectLevels({ walls: rangeOf(made), factors: factors.map((line) => [...line]) });
    }),
    { numRuns: RUNS },
  );
});

describe('the price of a job, level by level', () => {
  const question = readQuestion(mixedUs.walls, '', mixedUs.factors, null);
  const tree = tracedInJob('bid price', question, '');
  const names = (symbol: string): string[] =>
    nodeOf(tree.rec, symbol).parts.map((part) => partName(tree.rec, nodeOf(tree.rec, part).line, symbol));

  it('zones, parts of the price, tasks, walls, factors', () => {
    expect(names('bidPrice')).toEqual(['price before it is rounded']);
    expect(names('price')).toEqual(question.job.map(({ name }) => name));
    const ofZone = names('price_z1');
    expect(ofZone).toEqual(
      expect.arrayContaining(['Labor price', 'Cleaner price', 'Water price', 'Overhead', 'Profit']),
    );
    expect(ofZone).not.toContain('direct price');
    expect(names('priceLabor_z1')).toEqual(['Labor-hours', 'price.labor']);
    expect(names('laborHours_z1')).toEqual(
      expect.arrayContaining(['Scrape hours', 'Mask hours', 'Mobilize hours', 'Set-up hours']),
    );
    expect(names('scrubHours_z1')).toEqual(['A-1', 'A-2', 'A-3', 'A-4', 'A-5']);
    expect(names('scrubHours_r2')).toContain('working.share');
  });

  it('the zones are those of BIDPRICE', () => {
    nodeOf(tree.rec, 'price').parts.forEach((part, place) => {
      const zone = question.job[place]?.name ?? '';
      const priced = call('BIDPRICE', mixedUs.walls, zone, mixedUs.factors) as number;
      expect(nodeOf(tree.rec, part).line.value).toBeCloseTo(priced, 2);
    });
  });

  it('an expression reads in the words of the bid', () => {
    const words = (symbol: string) => expressionInWords(tree.rec, nodeOf(tree.rec, symbol).line);
    expect(words('priceLabor_z1')).toBe('Labor-hours × price.labor');
    expect(words('bareArea_r2')).toBe('Area − Openings');
    expect(words('pressure_r2')).toBe('the lesser of (nozzle.pressure; material.red-clay-brick.pressure)');
  });

  it('a value that is converted is one number, as its cell holds it', () => {
    const lap = nodeOf(tree.rec, 'mask_lap');
    expect(lap.parts).toEqual([]);
    expect(lap.stated).toEqual({ by: 'factor', id: 'mask.lap' });
    expect([lap.asStated.value, lap.asStated.unit]).toEqual([8, 'in']);
    expect(lap.line.value).toBeCloseTo(8 / 12, 12);
  });
});
