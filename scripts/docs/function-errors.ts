import type { FunctionName } from '../../functions/runs';
import { exampleActuals, exampleWalls, type Cells } from './example-job';

/** An error that a function gives, and where. */
export interface FunctionError {
  readonly error: '#VALUE!' | '#N/A';
  readonly where: string;
  /** Arguments that bring it about, in place of those of the example; the tests call the function with them. */
  readonly given: Readonly<Record<string, unknown>>;
  /** Whether it stands in some cells of a spill and not in the others. */
  readonly inCells?: true;
}

type Given = FunctionError['given'];

const value = (where: string, given: Given): FunctionError => ({ error: '#VALUE!', where, given });
const none = (where: string, given: Given): FunctionError => ({ error: '#N/A', where, given });
const inCells = (error: FunctionError): FunctionError => ({ ...error, inCells: true });

const [headings = [], ...rows] = exampleWalls;
const withColumn = (heading: string, cells: readonly (string | number)[]): Cells => [
  [...headings, heading],
  ...rows.map((row, index) => [...row, cells[index] ?? '']),
];
const masked: Cells = [headings, ...rows.filter((row) => row.at(-1) === 'yes')];
const rear = (mask: string): Cells => [
  headings,
  ...rows.map((row) => (row[1] === 'rear' ? [...row.slice(0, -1), mask] : row)),
];
const rearMasked = rear('yes');
const rearLeftOut = rear('only');
// A patch that takes longer to apply than the dwell allows, and a cleaner that the user insists on.
const slowPatch: Cells = [
  ['price.labor', 60],
  ['cleaner.class', 1],
  ['dwell.least', 0.5],
  ['dwell.most', 1],
  ['patch.least', 20],
];

const unknownPart = value('the part is not known', { part: 'rinsing twice' });
const noWindow = value(
  'a zone has no contact window: its class is set by `cleaner.class`, and even its smallest patch takes longer than the dwell',
  { factors: slowPatch },
);
const allMasked = none('every row of the zone or job is masked', { walls: masked, zone: '' });
const noWindowCells = inCells(
  value(
    'in the cells of hours, days and price of a zone without a contact window; the others keep their numbers',
    {
      zone: '',
      factors: slowPatch,
    },
  ),
);
const unreadActuals = value('a heading or a cell of the recorded work cannot be read', {
  actuals: [...exampleActuals, ['', 'attic', '', 'wash', 10, 1, 0, 0, '']],
});
const unknownFactor = value('a factor cannot be read', { factors: [['crews', 3]] });

/** What every function with the argument `walls` gives. */
export const errorsOfWalls: readonly FunctionError[] = [
  value('a heading or a cell of a wall row cannot be read', {
    walls: [...exampleWalls, ['a', '', '', 'Cheese', 1]],
  }),
  value('`Receives` names a zone that is not there, or leads in a circle', {
    walls: withColumn('Receives', ['attic']),
  }),
  unknownFactor,
  value('the zone is a range of several cells', { zone: [['front', 'rear']] }),
  none('no wall is in the zone', { zone: 'attic' }),
  none('every row is blank', { walls: [headings], zone: '' }),
];

/** What a function gives besides. */
export const errorsOf: Readonly<Record<FunctionName, readonly FunctionError[]>> = {
  CLASS: [value('the zones are washed with different classes: name one zone', { zone: '' }), allMasked],
  GOVERNING: [allMasked],
  GOVERNOR: [allMasked],
  WATER: [unknownPart],
  MASKING: [],
  TAPE: [],
  CREWHOURS: [unknownPart, noWindow],
  LABORHOURS: [unknownPart, noWindow],
  CLEANER: [],
  SCHEDULE: [
    noWindowCells,
    inCells(
      none('in the cells of class and ceiling of a zone in which every row is masked', { walls: rearMasked }),
    ),
  ],
  WALLROWS: [noWindowCells],
  TRACE: [
    value('the quantity is missing or not known', { quantity: '' }),
    value('each zone has its own number, and no zone is named', { quantity: 'class', zone: '' }),
    value('a wall is named, but the number belongs to its zone', { quantity: 'class', wall: 'rear wall' }),
    value('each wall has its own number, and no wall is named', { quantity: 'patch' }),
    value('the quantity is a price and neither `price.labor` nor `price.crew` is given', {
      quantity: 'price',
      factors: null,
    }),
    { ...noWindow, given: { ...noWindow.given, quantity: 'labor-hours' } },
    none('no wall row has that label', { wall: 'attic wall' }),
    none('there is no such number, for example no class where every row is masked', {
      quantity: 'class',
      walls: rearMasked,
    }),
  ],
  CHECKS: [],
  FACTORS: [unknownFactor],
  MATERIALS: [unknownFactor],
  SOURCES: [],
  RUNOFF: [],
  NEUTRALIZER: [unknownPart],
  BIDPRICE: [
    value('neither `price.labor` nor `price.crew` is given', { factors: null }),
    unknownPart,
    noWindow,
    none('the part is `rate` and nothing is washed', { part: 'rate', walls: rearLeftOut }),
  ],
  BIDPAGE: [unknownFactor],
  DAYPLAN: [unknownFactor, noWindowCells],
  OPTIONS: [
    noWindowCells,
    inCells(
      none('in the cells of a class that cannot be allowed, with the reason beside them', {
        walls: [headings, ...rows.map((row) => [...row.slice(0, -1), 'never'])],
      }),
    ),
  ],
  CHANGES: [
    value('a heading or a cell of a wall row cannot be read, before or after', {
      before: [['Wall', 'Area']],
    }),
    unknownFactor,
    inCells(
      value(
        'in the cells of hours and price of a change, where a zone has no contact window before or after it',
        {
          after: exampleWalls.slice(0, -1),
          before: exampleWalls.filter(([wall]) => wall !== 'rear wall'),
          factors: slowPatch,
        },
      ),
    ),
  ],
  ALTERNATES: [
    value('a row of the table of alternates cannot be read, or the value is not accepted in that column', {
      alternates: [
        ['Alternate', 'Wall', 'Column', 'Value'],
        ['Weaker mortar', 'rear wall', 'Mortar', 'K'],
      ],
    }),
    value('a heading of the table of alternates is missing', { alternates: [['Alternate', 'Wall']] }),
  ],
  PROGRESS: [
    unreadActuals,
    inCells(
      value('in the numbers of a zone without a contact window', {
        factors: slowPatch,
        zone: '',
      }),
    ),
  ],
  RATES: [unreadActuals],
  PATCH: [
    value('a number is not in the range that is accepted', { applyRate: -1 }),
    none('no area stays within the dwell before the cleaner dries', { timeToDry: 1 }),
  ],
  NOZZLE: [value('a number is not in the range that is accepted', { pressure: 'high' })],
  DRYING: [
    value('a number is not in the range that is accepted', { humidity: 50 }),
    none('nothing evaporates in this weather', { humidity: 1 }),
  ],
};
