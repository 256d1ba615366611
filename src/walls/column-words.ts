import type { ColumnId } from './columns';

/** The words of a column, for its reader; apart from the columns, since reading a cell needs none. */
export interface ColumnWords {
  /** What it holds. */
  readonly means: string;
  /** What estimators head it with, beside our own name; a unit behind it does not count. */
  readonly alsoCalled: readonly string[];
}

/** The words of each column. */
export const columnWords: Readonly<Record<ColumnId, ColumnWords>> = {
  wall: {
    means: "the row's own label, unique",
    alsoCalled: ['wall id', 'wall name', 'wall no', 'mark', 'label', 'location', 'wall type'],
  },
  zone: {
    means: 'walls whose wash and rinse water meet; washed with one cleaner',
    alsoCalled: ['wash zone', 'area name', 'section', 'facade', 'side'],
  },
  level: { means: 'order from the top, 1 = highest', alsoCalled: ['floor', 'storey', 'story', 'lift'] },
  material: {
    means: 'a name or code of the material table',
    alsoCalled: [
      'masonry',
      'unit',
      'substrate',
      'veneer',
      'cladding',
      'finish',
      'material type',
      'masonry type',
    ],
  },
  area: {
    means: 'gross face area',
    alsoCalled: ['gross area', 'face area', 'wall area', 'surface', 'gross'],
  },
  height: { means: 'wall height', alsoCalled: ['wall height', 'ht', 'hgt'] },
  openings: {
    means: 'area of windows and doors in it',
    alsoCalled: ['opening area', 'openings area', 'windows', 'window area', 'glazing', 'deduct'],
  },
  openingPerimeter: {
    means: 'perimeter of windows and doors in it',
    alsoCalled: ['openings perimeter', 'perimeter', 'perim', 'window perimeter', 'openings', 'windows'],
  },
  fixtures: {
    means: 'lights, boxes and vents to cover',
    alsoCalled: ['fixture count', 'lights', 'items to cover', 'penetrations'],
  },
  mortar: { means: 'mortar type of ASTM C270', alsoCalled: ['mortar type', 'type of mortar'] },
  residue: {
    means: 'mortar left on the face',
    alsoCalled: ['mortar residue', 'soiling', 'smears', 'condition', 'dirt'],
  },
  brushed: {
    means: 'brushed down each day; priced = and the brushing is in this bid',
    alsoCalled: ['brushed daily', 'daily brushing', 'brushed down'],
  },
  age: {
    means: 'days since laid, or the date it was laid, counted to the factor `wash.date`',
    alsoCalled: ['age days', 'days', 'days since laid', 'wall age'],
  },
  masked: {
    means:
      'yes = covered while its zone is washed, then washed by itself; only = covered and left unwashed; never = it cannot be covered',
    alsoCalled: ['mask', 'covered', 'protected', 'cover'],
  },
  access: {
    means: 'how it is reached; else the factor `access.kind`',
    alsoCalled: ['access from', 'reached by', 'means of access'],
  },
  suction: {
    means: 'measured initial rate of absorption',
    alsoCalled: ['ira', 'initial rate of absorption', 'absorption', 'rate of absorption'],
  },
  receives: {
    means: 'name of the upper zone whose rinse runs over this row',
    alsoCalled: ['receives rinse', 'runoff from', 'below'],
  },
};
