import { describe, expect, expectTypeOf, it } from 'vitest';
import { runoff } from '../../src/estimate/runoff';
import { readFactors } from '../../src/rules/read-factors';
import type { JobLineId, LineId, ZoneLineId } from '../../src/rules/methods';
import { Recorder, type RowRecord, type ZoneRecord } from '../../src/trace/recorder';

const job = () => new Recorder(readFactors(null));

describe('a record of a place', () => {
  it('keeps its place, whatever other records are made and written to in between', () => {
    const rec = job();
    const north = rec.zone(0, 'North');
    const first = north.row(2, 'N-1');
    const south = rec.zone(1, 'South');
    const tried = south.row(3, 'S-1', 2);
    tried.line('runoff', 3, '0');
    first.line('runoff', 1, '0');
    south.line('days', 4, '0');
    north.line('days', 2, '0');
    expect(rec.lineOf('runoff_r2')).toMatchObject({ where: 'N-1', row: 2 });
    expect(rec.lineOf('runoff_r3_c2')).toMatchObject({ where: 'S-1', row: 3 });
    expect(rec.lineOf('days_z1')).toMatchObject({ where: 'North' });
    expect(rec.lineOf('days_z1')).not.toHaveProperty('row');
    expect(rec.lineOf('days_z2')).toMatchObject({ where: 'South' });
  });

  it('writes among the lines of its job, in the order of all', () => {
    const rec = job();
    const row = rec.zone(0, 'North').row(2, 'N-1');
    row.lineNamed('first#', '1', 1, 'ratio', 'sum');
    rec.lineNamed('second', 'first_r2 + 1', 2, 'ratio', 'sum');
    row.lineNamed('third@', 'first# + second', 3, 'ratio', 'sum');
    expect(rec.linesFor('third_z1').map(({ symbol, where }) => [symbol, where])).toEqual([
      ['first_r2', 'N-1'],
      ['second', ''],
      ['third_z1', 'North'],
    ]);
    expect(row.linesFor('third_z1')).toEqual(rec.linesFor('third_z1'));
  });

  it('gives a number that all have the name of its own', () => {
    const rec = job();
    const zone = rec.zone(4, 'Yard');
    const row = zone.row(9, 'Y-1');
    for (const each of [rec, zone, row]) each.line('bidPrice', 1);
    expect(['bidPrice', 'bidPrice_z5', 'bidPrice_r9'].map((name) => rec.lineOf(name)?.expression)).toEqual([
      'round(price, 2)',
      'round(price_z5, 2)',
      'round(price_r9, 2)',
    ]);
  });
});

describe('a record of another place than its line', () => {
  it('does not compile', () => {
    expectTypeOf<Recorder>().not.toExtend<ZoneRecord>();
    expectTypeOf<Recorder>().not.toExtend<RowRecord>();
    expectTypeOf<ZoneRecord>().not.toExtend<RowRecord>();
    expectTypeOf<RowRecord>().toExtend<ZoneRecord>();
    expectTypeOf<'runoff'>().not.toExtend<ZoneLineId>();
    expectTypeOf<'days'>().toExtend<ZoneLineId>();
    expectTypeOf<'days'>().not.toExtend<JobLineId>();
    expectTypeOf<'bidPrice'>().toExtend<JobLineId>();
    expectTypeOf<LineId>().toEqualTypeOf<Parameters<RowRecord['line']>[0]>();
    const rec = job();
    // @ts-expect-error: runoff is a number of a row.
    expect(() => runoff(1, 1, 1, 1, rec)).toThrow();
    // @ts-expect-error: so it is in a zone.
    expect(() => runoff(1, 1, 1, 1, rec.zone(0, 'North'))).toThrow();
    expect(() => {
      // @ts-expect-error: the days are those of a zone.
      rec.line('days', 1);
    }).toThrow();
  });

  it.each<[string, (rec: Recorder) => void, string]>([
    [
      'a symbol of a row in the job',
      (rec) => {
        rec.lineNamed('water#', '0', 0, 'volume', 'sum');
      },
      '"water#" speaks of a row, and none is at hand.',
    ],
    [
      'a symbol of a row in a zone',
      (rec) => {
        rec.zone(0, 'North').nothing('water#', 'volume', 'notWashed');
      },
      '"water#" speaks of a row, and none is at hand.',
    ],
    [
      'a symbol of a zone in the job',
      (rec) => {
        rec.given('ownHours@', 1, 'laborHours', 'otherZone');
      },
      '"ownHours@" speaks of a zone, and none is at hand.',
    ],
    [
      'an expression of a row in a zone',
      (rec) => {
        rec.zone(0, 'North').sum('water@', ['water#'], [1], 'volume', 'sum');
      },
      '"water#" speaks of a row, and none is at hand.',
    ],
    [
      'an expression of a zone in the job',
      (rec) => {
        rec.most('tallest', ['levelHeight1@'], [1], 'length', 'levelHeight');
      },
      '"max(levelHeight1@)" speaks of a zone, and none is at hand.',
    ],
  ])('is an error: %s', (_, write, message) => {
    const rec = job();
    expect(() => {
      write(rec);
    }).toThrow(message);
    expect(rec.linesFor('water_z1')).toEqual([]);
  });
});
