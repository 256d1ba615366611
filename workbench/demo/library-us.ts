import type { Job, WallLine } from './wall-line';

// A row a line, as on the sheet.
// prettier-ignore
const south: readonly WallLine[] = [
  // wall, zone, level, material, area, height, openings, perimeter, fixtures, mortar, residue, brushed, age, masked, access, suction
  ['LS-01 parapet', 'Library south', 1, 'Red clay brick', 640, 4, null, null, null, 'N', 'light', 'yes', 35, 'no', null, null],
  ['LS-02 third floor, bays 1-4', 'Library south', 2, 'Red clay brick', 1180, 13.5, 260, 176, 2, 'N', 'moderate', 'yes', 42, 'no', null, null],
  ['LS-03 third floor, bays 5-8', 'Library south', 2, 'Red clay brick', 1180, 13.5, 260, 176, 2, 'N', 'moderate', 'no', 42, 'no', null, null],
  ['LS-04 third floor sills', 'Library south', 3, 'Cast stone', 96, 0.75, null, null, null, 'N', 'light', 'yes', 42, 'no', null, null],
  ['LS-05 second floor, bays 1-4', 'Library south', 4, 'Red clay brick', 1240, 14, 300, 196, 3, 'N', null, 'yes', 55, 'no', null, null],
  ['LS-06 second floor, bays 5-8', 'Library south', 4, 'Red clay brick', 1240, 14, 300, 196, 3, 'N', null, 'no', 55, 'no', null, 24],
  ['LS-07 stair hall glazing', 'Library south', 4, 'Coated glass', 420, 28, null, null, null, null, null, null, null, 'yes', null, null],
  ['LS-08 belt course', 'Library south', 5, 'Cast stone', 150, 1.2, null, null, null, 'N', 'moderate', 'yes', 60, 'no', null, null],
  ['LS-09 first floor, bays 1-4', 'Library south', 6, 'Red clay brick', 980, 12, 340, 168, 4, 'N', 'moderate', 'yes', 68, 'no', 'ground', null],
  ['LS-10 first floor, bays 5-8', 'Library south', 6, 'Red clay brick', 980, 12, 340, 168, 4, 'N', 'heavy', 'no', 68, 'no', 'ground', null],
  ['LS-11 plinth, bays 1-4', 'Library south', 7, 'Limestone', 310, 3.5, null, null, 1, 'N', 'light', 'yes', 75, 'no', 'ground', null],
  ['LS-12 plinth, bays 5-8', 'Library south', 7, 'Limestone', 310, 3.5, null, null, 1, 'N', 'light', 'yes', 75, 'no', 'ground', null],
];

// A row a line, as on the sheet.
// prettier-ignore
const north: readonly WallLine[] = [
  ['LN-01 parapet', 'Library north', 1, 'Dark clay brick', 520, 4, null, null, null, 'N', 'light', 'yes', 30, 'no', null, null],
  ['LN-02 third floor, west', 'Library north', 2, 'Dark clay brick', 1320, 13.5, 210, 148, 1, 'N', 'moderate', 'yes', 36, 'no', null, null],
  ['LN-03 third floor, east', 'Library north', 2, 'Dark clay brick', 1320, 13.5, 210, 148, 1, 'N', 'moderate', 'yes', 36, 'no', null, null],
  ['LN-04 second floor, west', 'Library north', 3, 'Red clay brick', 1380, 14, 240, 164, 2, 'N', null, 'yes', 48, 'no', null, null],
  ['LN-05 second floor, east', 'Library north', 3, 'Red clay brick', 1380, 14, 240, 164, 2, 'N', null, 'no', 48, 'no', null, null],
  ['LN-06 lintels', 'Library north', 4, 'Architectural precast', 110, 1, null, null, null, 'N', 'moderate', 'no', 50, 'no', null, null],
  ['LN-07 first floor, west', 'Library north', 5, 'Red clay brick', 860, 12, 180, 120, 3, 'N', 'moderate', 'no', 58, 'no', 'ground', null],
  ['LN-08 first floor, east', 'Library north', 5, 'Red clay brick', 720, 12, 150, 104, 3, 'N', 'moderate', 'no', 58, 'no', 'ground', null],
  ['LN-09 entry portal, piers', 'Library north', 5, 'Glazed brick', 260, 12, null, null, 4, 'N', 'light', 'yes', 25, 'yes', 'ground', null],
  ['LN-10 entry portal, head', 'Library north', 4, 'Glazed brick', 95, 3, null, null, 2, 'N', 'light', 'yes', 25, 'yes', null, null],
  ['LN-11 entry doors', 'Library north', 6, 'Coated glass', 120, 10, null, null, null, null, null, null, null, 'yes', 'ground', null],
  ['LN-12 base course', 'Library north', 6, 'Granite', 180, 2, null, null, null, 'N', 'light', 'yes', 64, 'no', 'ground', null],
];

// A row a line, as on the sheet.
// prettier-ignore
const towers: readonly WallLine[] = [
  ['ST-01 west tower, cap', 'Stair towers', 1, 'Architectural precast', 72, 1.5, null, null, null, 'N', 'light', 'yes', 28, 'no', 'lift', null],
  ['ST-02 west tower, upper', 'Stair towers', 2, 'Dark clay brick', 780, 20, 36, 42, 1, 'N', 'light', 'yes', 33, 'no', 'lift', null],
  ['ST-03 west tower, middle band', 'Stair towers', 3, 'Sand-faced brick', 780, 20, 36, 42, 1, 'N', 'moderate', 'yes', 40, 'no', 'lift', null],
  ['ST-04 west tower, lower', 'Stair towers', 4, 'Dark clay brick', 640, 16, 63, 48, 2, 'N', 'moderate', 'no', 47, 'no', 'lift', null],
  ['ST-05 east tower, cap', 'Stair towers', 1, 'Architectural precast', 72, 1.5, null, null, null, 'N', 'light', 'yes', 28, 'no', 'lift', null],
  ['ST-06 east tower, upper', 'Stair towers', 2, 'Dark clay brick', 780, 20, 36, 42, 1, 'N', 'light', 'yes', 33, 'no', 'lift', null],
  ['ST-07 east tower, middle', 'Stair towers', 3, 'Dark clay brick', 780, 20, 36, 42, 1, 'N', null, 'yes', 40, 'no', 'lift', null],
  ['ST-08 east tower, lower', 'Stair towers', 4, 'Dark clay brick', 640, 16, 63, 48, 2, 'N', null, 'no', 47, 'no', 'lift', null],
  ['ST-09 slot windows', 'Stair towers', 3, 'Plain glass', 90, 40, null, null, null, null, null, null, null, 'yes', 'lift', null],
];

// A row a line, as on the sheet.
// prettier-ignore
const yard: readonly WallLine[] = [
  ['PY-01 plant house, upper north', 'Plant yard', 1, 'Split-face block', 720, 10, 48, 44, 2, 'S', 'moderate', 'no', 30, 'no', 'lift', null],
  ['PY-02 plant house, upper south', 'Plant yard', 1, 'Split-face block', 720, 10, 48, 44, 2, 'S', 'moderate', 'no', 30, 'no', 'lift', null],
  ['PY-03 plant house, upper ends', 'Plant yard', 1, 'Split-face block', 480, 10, null, null, 1, 'S', 'heavy', 'no', 30, 'no', 'lift', null],
  ['PY-04 accent band, north', 'Plant yard', 2, 'Ground-face block', 110, 1.33, null, null, null, 'S', 'light', 'yes', 34, 'no', 'lift', null],
  ['PY-05 accent band, south', 'Plant yard', 2, 'Ground-face block', 110, 1.33, null, null, null, 'S', 'light', 'yes', 34, 'no', 'lift', null],
  ['PY-06 plant house, lower north', 'Plant yard', 3, 'Split-face block', 640, 9, 84, 50, 3, 'S', 'heavy', 'no', 38, 'no', 'ground', null],
  ['PY-07 plant house, lower south', 'Plant yard', 3, 'Split-face block', 640, 9, 84, 50, 3, 'S', null, 'no', 38, 'no', 'ground', null],
  ['PY-08 air louvers, north', 'Plant yard', 2, 'Painted or anodized aluminum', 160, 6, null, 104, null, null, null, null, null, 'yes', 'lift', null],
  ['PY-09 air louvers, south', 'Plant yard', 2, 'Painted or anodized aluminum', 120, 6, null, 80, null, null, null, null, null, 'yes', 'lift', null],
  ['PY-10 yard wall, outside', 'Plant yard', 4, 'Plain concrete block', 890, 8, null, null, null, 'S', 'moderate', 'no', 45, 'no', 'ground', null],
  ['PY-11 yard wall, inside', 'Plant yard', 4, 'Plain concrete block', 890, 8, null, null, 2, 'S', 'moderate', 'no', 45, 'no', 'ground', null],
  ['PY-12 yard gates', 'Plant yard', 5, 'Galvanized steel', 140, 8, null, 76, null, null, null, null, null, 'only', 'ground', null],
];

/** A library with its plant building, in US units. */
export const libraryUs: Job = {
  file: 'demo-bid-us.xlsx',
  title: 'Library and plant building: facade bid',
  units: { area: 'ft²', length: 'ft', volume: 'gal', mass: 'lb' },
  walls: [...south, ...north, ...towers, ...yard],
  swap: { wall: 'ST-03 west tower, middle band', former: 'Dark clay brick' },
  factors: [
    ['units', 'US', 'ft, ft², US gal'],
    ['team.size', 2, 'one at the wand, one pre-wets, tends and scrubs'],
    ['teams', 2, 'two teams side by side, each with its own pump'],
    ['access.kind', 'scaffold', 'where a wall does not say how it is reached'],
    ['cleaner.coverage', 60, 'ft²/gal on the sample panel, rough faces'],
    ['setup.perDay', 1, 'h; water is brought from the street'],
    ['setup.zone', 6, 'labor-h: hoses, standpipe, containment of a zone'],
    ['mobilize.hours', 12, 'labor-h, there and back'],
    ['protect.hours', 18, 'labor-h: landscaping, paving, entrance'],
    ['rate.maskOn', 100, 'ft²/h a person; many small openings'],
    ['hire.least', 5, 'd; rented by the week'],
    ['weather.days', 2, 'd, from the records of the site'],
    ['price.labor', 58, 'demo price: a person for an hour'],
    ['price.cleaner.1', 14, 'demo price: per gal of concentrate'],
    ['price.cleaner.2', 24, 'demo price: per gal of concentrate'],
    ['price.cleaner.3', 31, 'demo price: per gal of concentrate'],
    ['price.film', 0.18, 'demo price: per ft²'],
    ['price.tape', 0.11, 'demo price: per ft'],
    ['price.water', 0.03, 'demo price: per gal, brought and metered'],
    ['price.equipment', 165, 'demo price: pump, tank and hoses a day'],
    ['price.access', 215, 'demo price: lift a day'],
    ['price.bicarbonate', 0.85, 'demo price: per lb'],
    ['price.disposal', 0.09, 'demo price: per gal taken away'],
    ['price.mobilization', 1650, 'demo price: trucking, for the job'],
    ['price.protection', 880, 'demo price: boards and sheets, for the job'],
    ['price.fixed', 420, 'demo price: hydrant meter and permit'],
    ['price.supervision', 8, 'demo markup on labor, %'],
    ['price.contingency', 5, 'demo markup, %'],
    ['price.overhead', 11, 'demo markup, %'],
    ['price.profit', 9, 'demo markup, %'],
  ],
  // A row a line, as on the sheet.
  // prettier-ignore
  actuals: [
    // date, zone, wall, task, area, hours, water, cleaner, note
    [46175, 'Library south', null, 'zonesetup', 6506, 7, null, null, 'hydrant on the far side'],
    [46175, 'Library south', null, 'mask', 1700, 21, null, null, null],
    [46176, 'Library south', null, 'scrape', 3600, 11, null, null, null],
    [46177, 'Library south', null, 'scrape', 2900, 16, null, null, 'bays 5-8, not brushed'],
    [46178, null, 'LS-01 parapet', 'wash', 640, 14, 900, 0.2, null],
    [46178, null, 'LS-02 third floor, bays 1-4', 'wash', 920, 29, 1300, 0.25, null],
    [46181, null, 'LS-03 third floor, bays 5-8', 'wash', 920, 33, 1500, 0.3, 'two patches done again'],
    [46182, null, 'LS-04 third floor sills', 'wash', 96, 2.5, 150, 0.03, null],
    [46183, null, 'LS-05 second floor, bays 1-4', 'wash', 940, 24, 1300, 0.25, null],
  ],
  alternates: [
    ['Plinth covered with the brick washed first', 'LS-11 plinth, bays 1-4', 'Masked', 'yes'],
    ['Plinth covered with the brick washed first', 'LS-12 plinth, bays 5-8', 'Masked', 'yes'],
    ['Type O mortar in the yard', 'Plant yard', 'Mortar', 'O'],
    ['West tower band as it was drawn', 'ST-03 west tower, middle band', 'Material', 'Dark clay brick'],
    ['Larger nozzle', null, 'nozzle.number', 25],
  ],
  traced: 'Stair towers',
  before: [
    {
      item: '10',
      description: 'Tube scaffold, library, three lifts',
      quantity: 14200,
      unit: 'ft²',
      rate: 2.35,
    },
    {
      item: '20',
      description: 'Hang and dismantle debris netting',
      quantity: 14200,
      unit: 'ft²',
      rate: 0.28,
    },
  ],
  after: [
    { item: '40', description: 'Sealant joints at openings', quantity: 2480, unit: 'ft', rate: 6.4 },
    { item: '50', description: 'Glass cleaning, inside faces', quantity: 3900, unit: 'ft²', rate: 0.62 },
  ],
};
