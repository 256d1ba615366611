import fc from 'fast-check';
import { it } from 'vitest';
import { columnIds } from '../../src/walls/columns';
import { expectSameLines, scheduleOf, wallRowsOf } from './compare';
import { ownFactors, rangeOf, RUNS, walls } from './walls';

const priced = ownFactors.map((own) => [['price.labor', 40], ...own.filter(([id]) => id !== 'price.labor')]);

/** A list in another order, told by keys to sort by. */
function shuffled<T>(list: readonly T[], keys: readonly number[]): T[] {
  return list
    .map((item, index) => ({ item, key: keys[index % keys.length] ?? 0 }))
    .sort((a, b) => a.key - b.key)
    .map(({ item }) => item);
}

const keys = fc.array(fc.nat(), { minLength: 20, maxLength: 20 });

it('the order of the rows changes nothing', () => {
  fc.assert(
    fc.property(walls, keys, priced, (rows, order, own) => {
      const range = rangeOf(rows);
      const [head = [], ...body] = range;
      const other = [head, ...shuffled(body, order)];
      expectSameLines(scheduleOf(range, own), scheduleOf(other, own));
      expectSameLines(wallRowsOf(range, own), wallRowsOf(other, own));
    }),
    { numRuns: RUNS },
  );
});

it('the order of the columns, columns of others and the spelling of headings change nothing', () => {
  fc.assert(
    fc.property(walls, keys, priced, fc.string(), (rows, order, own, note) => {
      const range = rangeOf(rows);
      const other = rangeOf(rows, shuffled(columnIds, order)).map((cells, index) => [
        index === 0 ? 'Remarks of the site' : note,
        ...cells.map((cell) => (index === 0 ? `  ${String(cell).toUpperCase().replace(' ', '  ')} ` : cell)),
        index === 0 ? '' : note,
      ]);
      expectSameLines(scheduleOf(range, own), scheduleOf(other, own));
      expectSameLines(wallRowsOf(range, own), wallRowsOf(other, own));
    }),
    { numRuns: RUNS },
  );
});

it('blank rows change nothing, whatever the host hands a blank over as', () => {
  const blank = fc.constantFrom('', 0, null, undefined, '  ');
  const at = fc.array(fc.tuple(fc.nat(), blank), { minLength: 1, maxLength: 5 });
  fc.assert(
    fc.property(walls, at, priced, (rows, blanks, own) => {
      const range = rangeOf(rows);
      const other = [...range];
      for (const [place, cell] of blanks) {
        other.splice(
          1 + (place % other.length),
          0,
          Array.from({ length: columnIds.length }, () => cell),
        );
      }
      expectSameLines(scheduleOf(range, own), scheduleOf(other, own));
      expectSameLines(wallRowsOf(range, own), wallRowsOf(other, own));
    }),
    { numRuns: RUNS },
  );
});
