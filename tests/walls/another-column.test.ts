import fc from 'fast-check';
import { afterEach, expect, it, vi } from 'vitest';
import { materials } from '../../src/rules/materials';
import { readFactors } from '../../src/rules/read-factors';
import { columnIds, columns, type ColumnId } from '../../src/walls/columns';
import * as reading from '../../src/walls/read-walls';
import { cellsOf, headed, walls } from '../properties/walls';

const { readGroups, readWalls } = reading;
const factors = readFactors([['units', 'SI']]);
const TABLE = '../../src/walls/columns';

/** Reads as the product would with another table of columns. */
async function readingWith(
  order: readonly string[],
): Promise<Pick<typeof reading, 'readWalls' | 'readGroups'>> {
  const own: Record<string, unknown> = columns;
  const colour = { name: 'Colour', needed: false, reading: { as: 'text', blank: '' } };
  vi.resetModules();
  vi.doMock(TABLE, () => ({
    columns: Object.fromEntries(order.map((id) => [id, own[id] ?? colour])),
    columnIds: order,
  }));
  return import('../../src/walls/read-walls');
}

afterEach(() => {
  vi.doUnmock(TABLE);
  vi.resetModules();
});

it.each([...columnIds, 'the end'])(
  'a column that the product comes to know before %s moves no other',
  async (before) => {
    const at = before === 'the end' ? columnIds.length : columnIds.findIndex((id) => id === before);
    const other = await readingWith(columnIds.toSpliced(at, 0, 'colour' as ColumnId));
    fc.assert(
      fc.property(walls, fc.constantFrom('red', ''), (made, colour) => {
        const range = headed(made.map(cellsOf));
        const wider = range.map((cells, row) => cells.toSpliced(at, 0, row === 0 ? 'Colour' : colour));
        expect(other.readWalls(wider, factors)).toEqual(readWalls(range, factors));
        expect(other.readGroups(wider, factors)).toEqual(readGroups(range, factors));
      }),
      { numRuns: 20 },
    );
  },
);

it('columns that the product lists in another order hold what they held', async () => {
  const other = await readingWith(columnIds.toReversed());
  fc.assert(
    fc.property(walls, (made) => {
      const range = headed(made.map(cellsOf));
      expect(other.readWalls(range, factors)).toEqual(readWalls(range, factors));
    }),
  );
});

it('each column is read into its own field, wherever it stands', () => {
  const cells: Readonly<Record<ColumnId, unknown>> = {
    wall: 'A',
    zone: 'North',
    level: 2,
    material: 'Limestone',
    area: 30,
    height: 4,
    openings: 5,
    openingPerimeter: 6,
    fixtures: 7,
    mortar: 'S',
    residue: 'heavy',
    brushed: 'yes',
    age: 8,
    masked: 'only',
    access: 'ladder',
    suction: 9,
    receives: 'South',
  };
  fc.assert(
    fc.property(
      fc.shuffledSubarray(columnIds, { minLength: columnIds.length }),
      fc.nat(columnIds.length),
      (order, at) => {
        const range = headed([cells], order).map((row, index) =>
          row.toSpliced(at, 0, index === 0 ? 'Of the user' : 'x'),
        );
        expect(readWalls(range, factors)).toEqual([
          {
            row: 2,
            wall: 'A',
            zone: 'North',
            level: 2,
            material: factors.materials[materials.findIndex(({ name }) => name === 'Limestone')],
            area: 30,
            height: 4,
            openings: 5,
            openingPerimeter: 6,
            fixtures: 7,
            mortar: 'S',
            residue: 'heavy',
            brushed: true,
            brushPriced: false,
            brushedStated: true,
            age: 8,
            masked: true,
            mask: 'only',
            neverMasked: false,
            access: 'ladder',
            suction: 9,
            receives: 'South',
          },
        ]);
      },
    ),
  );
});
