import type { Job } from './wall-line';

/** A school workshop, in metric units. */
export const workshopSi: Job = {
  file: 'demo-bid-metric.xlsx',
  title: 'School workshop: facade bid',
  units: { area: 'm²', length: 'm', volume: 'L', mass: 'kg' },
  // A row a line, as on the sheet.
  // prettier-ignore
  walls: [
    // wall, zone, level, material, area, height, openings, perimeter, fixtures, mortar, residue, brushed, age, masked, access, suction
    ['WH-01 hall, upper', 'Workshop hall', 1, 'Light clay brick', 84, 3.2, null, null, null, 'N', 'light', 'yes', 40, 'no', null, null],
    ['WH-02 hall, middle west', 'Workshop hall', 2, 'Light clay brick', 62, 3.6, 14, 34, 1, 'N', 'moderate', 'yes', 45, 'no', null, null],
    ['WH-03 hall, middle east', 'Workshop hall', 2, 'Light clay brick', 62, 3.6, 14, 34, 1, 'N', null, 'no', 45, 'no', null, null],
    ['WH-04 hall, lower', 'Workshop hall', 3, 'Manganese-colored brick', 96, 2.8, 22, 41, 4, 'N', 'moderate', 'no', 52, 'no', 'ground', null],
    ['WH-05 roller doors', 'Workshop hall', 3, 'Painted or anodized aluminum', 18, 3, null, 17, null, null, null, null, null, 'yes', 'ground', null],
    ['WH-06 window sills', 'Workshop hall', 3, 'Cast stone', 7.5, 0.2, null, null, null, 'N', 'light', 'yes', 52, 'no', null, null],
    ['WH-07 plinth', 'Workshop hall', 4, 'Granite', 16, 0.5, null, null, null, 'N', 'light', 'yes', 60, 'no', 'ground', null],
    ['OW-01 office wing, upper', 'Office wing', 1, 'Clay brick in colored mortar', 58, 3, 12, 30, null, 'O', 'light', 'yes', 35, 'no', null, null],
    ['OW-02 office wing, lower', 'Office wing', 2, 'Clay brick in colored mortar', 66, 3.3, 15, 36, 2, 'O', 'moderate', 'yes', 41, 'no', null, 1.2],
    ['OW-03 porch', 'Office wing', 2, 'Glazed terra cotta', 11, 2.6, null, null, 2, 'N', 'light', 'yes', 20, 'no', 'ground', null],
    ['OW-04 porch soffit', 'Office wing', 2, 'Timber', 9, 0.3, null, null, null, null, null, null, null, 'only', 'ladder', null],
    ['OW-05 entrance glazing', 'Office wing', 2, 'Coated glass', 13, 2.6, null, 15, null, null, null, null, null, 'yes', 'ground', null],
    ['BH-01 boiler house, upper', 'Boiler house', 1, 'Red clay brick', 46, 2.8, 4, 10, 1, 'S', 'moderate', 'no', 38, 'no', null, null],
    ['BH-02 boiler house, middle band', 'Boiler house', 2, 'Manganese-colored brick', 14, 0.8, null, null, null, 'S', 'light', 'yes', 41, 'no', null, null],
    ['BH-03 boiler house, lower', 'Boiler house', 3, 'Red clay brick', 52, 3, 6, 14, 2, 'S', 'heavy', 'no', 44, 'no', 'ground', null],
  ],
  swap: { wall: 'BH-02 boiler house, middle band', former: 'Dark clay brick' },
  factors: [
    ['units', 'SI', 'm, m², L'],
    ['team.size', 2, 'people'],
    ['access.kind', 'scaffold', 'a mobile tower where a wall does not say'],
    ['nozzle.number', 12, 'a smaller nozzle, over the yard drains'],
    ['setup.zone', 3, 'labor-h: hoses and containment of a zone'],
    ['mobilize.hours', 4, 'labor-h, there and back'],
    ['protect.hours', 6, 'labor-h: drains and landscaping'],
    ['price.labor', 46, 'demo price: a person for an hour'],
    ['price.cleaner.1', 4.2, 'demo price: per L of concentrate'],
    ['price.cleaner.2', 6.5, 'demo price: per L of concentrate'],
    ['price.cleaner.3', 8.4, 'demo price: per L of concentrate'],
    ['price.film', 2.1, 'demo price: per m²'],
    ['price.tape', 0.32, 'demo price: per m'],
    ['price.water', 0.008, 'demo price: per L'],
    ['price.equipment', 95, 'demo price: pump and hoses a day'],
    ['price.access', 85, 'demo price: mobile tower a day'],
    ['price.bicarbonate', 1.9, 'demo price: per kg'],
    ['price.disposal', 0.02, 'demo price: per L taken away'],
    ['price.mobilization', 350, 'demo price: trucking, for the job'],
    ['price.protection', 160, 'demo price: drain covers and sheets'],
    ['price.supervision', 6, 'demo markup on labor, %'],
    ['price.minimum', 2500, 'demo price: minimum price of a job'],
    ['price.overhead', 12, 'demo markup, %'],
    ['price.profit', 7, 'demo markup, %'],
  ],
  // A row a line, as on the sheet.
  // prettier-ignore
  actuals: [
    // date, zone, wall, task, area, hours, water, cleaner, note
    [46175, 'Workshop hall', null, 'mask', 60, 8, null, null, null],
    [46175, null, 'WH-01 hall, upper', 'scrape', 84, 1.8, null, null, null],
    [46176, null, 'WH-01 hall, upper', 'prewet', 84, 2.1, 300, null, null],
    [46176, null, 'WH-01 hall, upper', 'apply', 84, 2, null, 6, null],
    [46176, null, 'WH-01 hall, upper', 'scrub', 84, 5.5, null, null, null],
    [46176, null, 'WH-01 hall, upper', 'rinse', 84, 3.2, 2000, null, 'wind from the yard'],
    [46177, null, 'WH-02 hall, middle west', 'scrape', 48, 2.2, null, null, null],
    [46177, null, 'WH-02 hall, middle west', 'scrub', 48, 4.2, null, null, null],
    [46177, null, 'WH-02 hall, middle west', 'rinse', 48, 1.9, 1200, null, null],
  ],
  alternates: [
    ['Type N mortar at the boiler house', 'Boiler house', 'Mortar', 'N'],
    ['Hall brushed down daily', 'WH-03 hall, middle east', 'Brushed', 'yes'],
    ['Hall brushed down daily', 'WH-04 hall, lower', 'Brushed', 'yes'],
    ['Porch of glazed brick', 'OW-03 porch', 'Material', 'Glazed brick'],
  ],
  traced: 'Boiler house',
  before: [
    { item: '10', description: 'Protection of paving and landscaping', quantity: 140, unit: 'm²', rate: 3.8 },
  ],
  after: [{ item: '30', description: 'Window cleaning, inside', quantity: 92, unit: 'm²', rate: 4.2 }],
};
