import type { ColumnId } from './columns';

/** What each column means, for a reader; apart from the columns, since reading them needs no words. */
export const columnMeanings: Readonly<Record<ColumnId, string>> = {
  wall: "the row's own label, unique",
  zone: 'walls whose wash and rinse water meet; washed with one cleaner',
  level: 'order from the top, 1 = highest',
  material: 'a name or code of the material table',
  area: 'gross face area',
  height: 'wall height',
  openings: 'area of windows and doors in it',
  openingPerimeter: 'perimeter of windows and doors in it',
  fixtures: 'lights, boxes and vents to cover',
  mortar: 'mortar type of ASTM C270',
  residue: 'mortar left on the face',
  brushed: 'brushed down each day; priced = and the brushing is in this bid',
  age: 'days since laid, or the date it was laid, counted to the factor `wash.date`',
  masked:
    'yes = covered while its zone is washed, then washed by itself; only = covered and left unwashed; never = it cannot be covered',
  access: 'how it is reached; else the factor `access.kind`',
  suction: 'measured initial rate of absorption',
  receives: 'name of the upper zone whose rinse runs over this row',
};
