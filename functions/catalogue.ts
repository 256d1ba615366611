import { tasks } from '../src/actuals/task';
import { priceParts } from './bid-price';
import { hourParts, neutralizerParts, waterParts } from './quantity-functions';
import type { FunctionName } from './runs';
import { traceNames } from './trace-names';
import type { FunctionEntry, Parameter } from './worksheet-function';

const range = (name: string, description: string, optional: boolean): Parameter => ({
  name,
  description,
  type: 'any',
  dimensionality: 'matrix',
  optional,
});
const one = (name: string, description: string, optional = true): Parameter => ({
  name,
  description,
  type: 'any',
  dimensionality: 'scalar',
  optional,
});
const WALLS = range('walls', 'Wall rows with their headings, for example Walls[#All]', false);
const ZONE = one('zone', 'Name of one zone; empty for the whole job');
const FACTORS = range(
  'factors',
  'Factor id and value, with your source in a third column; also units (US or SI)',
  true,
);
const HEADINGS = range('headings', 'Two columns: our column, your heading for it', true);
const ACTUALS = range(
  'actuals',
  `Recorded work with its headings: Date, Zone or Wall, Task, Area, Hours, Water, Cleaner, Note; a task is ${tasks.map(({ name }) => name).join(', ')}`,
  false,
);
const UNITS = { ...one('units', 'US or SI; US where it is left out'), choices: ['US', 'SI'] };
const RATE = 'rate';
const part = (parts: object, more = ''): Parameter => ({
  ...one('part', `One part: ${Object.keys(parts).join(', ')}${more}; empty for the whole`),
  choices: more === '' ? Object.keys(parts) : [...Object.keys(parts), RATE],
});

const question = [WALLS, ZONE, FACTORS, HEADINGS];

const entries: Readonly<Record<FunctionName, Omit<FunctionEntry, 'name'>>> = {
  CLASS: {
    description:
      'Cleaner class to use in a zone: the one that takes the fewest labor-hours, never above the governing ceiling.',
    parameters: question,
    result: 'scalar',
    unit: 'class',
    rule: 'fewest labor-hours, from clear water to the governing ceiling; a tie goes to the gentlest',
    example: '=WASH.CLASS(Walls[#All],"Library south")',
  },
  GOVERNING: {
    description:
      'Governing ceiling: the strongest class that the unmasked material that tolerates least allows.',
    parameters: question,
    result: 'scalar',
    unit: 'class',
    rule: 'lowest of the ceilings of the unmasked rows',
    example: '=WASH.GOVERNING(Walls[#All],"Library south")',
  },
  GOVERNOR: {
    description: 'Material or materials that set the governing ceiling.',
    parameters: question,
    result: 'scalar',
    unit: 'text',
    rule: 'unmasked materials with the lowest ceiling',
    example: '=WASH.GOVERNOR(Walls[#All],"Library south")',
  },
  WATER: {
    description: 'Water volume: pre-wet, keeping wet what lies below, mist, mix, rinse and re-clean.',
    parameters: [WALLS, ZONE, FACTORS, part(waterParts), HEADINGS],
    result: 'scalar',
    unit: 'volume',
    rule: 'square-root-of-time uptake and runoff of each pass; what lies below kept wet; dilution of the cleaner; rinse water per area',
    example: '=WASH.WATER(Walls[#All],"Library south",Factors[#All],"rinse")',
  },
  MASKING: {
    description: 'Masking area with laps and fixtures.',
    parameters: question,
    result: 'scalar',
    unit: 'area',
    rule: 'openings, masked rows, a band of laps along each perimeter, and each fixture',
    example: '=WASH.MASKING(Walls[#All],"Library south")',
  },
  TAPE: {
    description: 'Tape length.',
    parameters: question,
    result: 'scalar',
    unit: 'length',
    rule: 'perimeters and their waste',
    example: '=WASH.TAPE(Walls[#All],"Library south")',
  },
  CREWHOURS: {
    description: 'Crew-hours: one is the whole crew, all teams together, for one hour.',
    parameters: [WALLS, ZONE, FACTORS, part(hourParts), HEADINGS],
    result: 'scalar',
    unit: 'crewHours',
    rule: 'labor-hours divided by the people of all teams',
    example: '=WASH.CREWHOURS(Walls[#All],"Library south",Factors[#All])',
  },
  LABORHOURS: {
    description: 'Labor-hours: one is one person for one hour. This is what is priced.',
    parameters: [WALLS, ZONE, FACTORS, part(hourParts, ', rate (washed area per labor-hour)'), HEADINGS],
    result: 'scalar',
    unit: 'laborHours',
    rule: 'scraping, masking, the wash within the dwell of the label, moves, and what belongs to zone and job',
    example: '=WASH.LABORHOURS(Walls[#All],"Library south",Factors[#All],"scrub")',
  },
  CLEANER: {
    description: 'Volume of cleaner concentrate.',
    parameters: question,
    result: 'scalar',
    unit: 'volume',
    rule: 'area divided by coverage in each pass, in a mix of 1 part to n parts of water',
    example: '=WASH.CLEANER(Walls[#All],"Library south")',
  },
  SCHEDULE: {
    description:
      'Spills the whole estimate: one line per zone with every quantity, and its price where price.labor or price.crew is given.',
    parameters: question,
    result: 'matrix',
    unit: 'text',
    rule: 'every rule of the model',
    example: '=WASH.SCHEDULE(Walls[#All],,Factors[#All])',
  },
  WALLROWS: {
    description: 'Spills every quantity of every wall row; the columns add up to SCHEDULE.',
    parameters: question,
    result: 'matrix',
    unit: 'text',
    rule: 'every rule of the model; what belongs to a zone is shared out by washed area',
    example: '=WASH.WALLROWS(Walls[#All],"Library south",Factors[#All])',
  },
  TRACE: {
    description:
      'Spills how a number was worked out: symbol, expression, value, unit, rule, source, kind of source, where.',
    parameters: [
      one(
        'quantity',
        'What to explain: water, pre-wet water, masking, tape, cleaner, labor-hours, class, governing and so on',
        false,
      ),
      ...question,
      one('wall', 'Label of one wall row, to explain its share alone'),
    ],
    result: 'matrix',
    unit: 'text',
    rule: 'the lines that the computation itself writes',
    example: '=WASH.TRACE("water",Walls[#All],"Library south",Factors[#All])',
  },
  CHECKS: {
    description: 'Spills what to look at: check, what, where, why, what to do, source.',
    parameters: question,
    result: 'matrix',
    unit: 'text',
    rule: 'age, sample area, mortar, materials under the class used, nozzle, contact window, weather, blanks, openings, example rows, names that look alike, yield, price per area and overrides',
    example: '=WASH.CHECKS(Walls[#All],,Factors[#All])',
  },
  FACTORS: {
    description:
      'Spills every factor in force with unit, source and kind of source; your own values are marked override.',
    parameters: [FACTORS],
    result: 'matrix',
    unit: 'text',
    rule: 'the table of factors, with your own values on top',
    example: '=WASH.FACTORS(Factors[#All])',
  },
  MATERIALS: {
    description:
      'Spills every material in force with its further names and yours; your own values are marked override.',
    parameters: [FACTORS],
    result: 'matrix',
    unit: 'text',
    rule: 'the table of materials, with your own values on top',
    example: '=WASH.MATERIALS(Factors[#All])',
  },
  SOURCES: {
    description: 'Spills every source that a rule, factor or material comes from.',
    parameters: [],
    result: 'matrix',
    unit: 'text',
    rule: 'the table of sources',
    example: '=WASH.SOURCES()',
  },
  RUNOFF: {
    description: 'Runoff to collect.',
    parameters: question,
    result: 'scalar',
    unit: 'volume',
    rule: 'water and concentrate applied, less what the faces take up, times the share captured',
    example: '=WASH.RUNOFF(Walls[#All],"Library south",Factors[#All])',
  },
  NEUTRALIZER: {
    description: 'Mass of alkali that neutralizes the acid of the cleaner.',
    parameters: [WALLS, ZONE, FACTORS, part(neutralizerParts), HEADINGS],
    result: 'scalar',
    unit: 'mass',
    rule: 'moles of acid in the concentrate, as HCl, times the share captured, to sodium bicarbonate or soda ash',
    example: '=WASH.NEUTRALIZER(Walls[#All],"Library north",Factors[#All])',
  },
  BIDPRICE: {
    description:
      'Price, rounded to cents once; a part is not rounded. Needs the factor price.labor or price.crew.',
    parameters: [WALLS, ZONE, FACTORS, part(priceParts, ', rate (price per area)'), HEADINGS],
    result: 'scalar',
    unit: 'money',
    rule: 'labor, cleaner, masking, water, equipment, access, neutralizer, disposal and fixed sums; then supervision, contingency, overhead, profit; at least the minimum price of the job',
    example: '=WASH.BIDPRICE(Walls[#All],"Library south",Factors[#All])',
  },
  OPTIONS: {
    description:
      'Spills the mask-or-govern ladder at equal scope: for each class what is masked and washed afterwards, labor-hours, water, price; the cheapest is marked.',
    parameters: question,
    result: 'matrix',
    unit: 'text',
    rule: 'a class is allowed when every unmasked row has a ceiling of at least that class; masked masonry is washed afterwards at its own class',
    example: '=WASH.OPTIONS(Walls[#All],"Library south",Factors[#All])',
  },
  CHANGES: {
    description: 'Spills what changed between two states of the walls, and what each change did.',
    parameters: [
      range('before', 'Wall rows of the earlier state, with their headings', false),
      range('after', 'Wall rows of the later state, with their headings', false),
      FACTORS,
      HEADINGS,
    ],
    result: 'matrix',
    unit: 'text',
    rule: 'the part of each change is what it does on average over every order in which the changes can be made (Shapley value): exact up to 10 changes, beyond over 50 seeded orders and their reversals',
    example: '=WASH.CHANGES(Baseline[#All],Walls[#All],Factors[#All])',
  },
  ALTERNATES: {
    description:
      'Spills what each alternate adds to the bid or deducts from it; without a table of alternates, of the choices that can still be made early.',
    parameters: [
      WALLS,
      range(
        'alternates',
        'Table of Alternate, Wall (a label, a zone, or blank for all), Column (of the walls, or a factor id), Value; left out, the early choices',
        true,
      ),
      ZONE,
      FACTORS,
      HEADINGS,
    ],
    result: 'matrix',
    unit: 'text',
    rule: 'each alternate is applied to the base alone; the last line takes all that save together, the largest first',
    example: '=WASH.ALTERNATES(Walls[#All],Alternates[#All],,Factors[#All])',
  },
  PROGRESS: {
    description:
      'Spills recorded work against the estimate, by zone and task: budget, done, earned, actual, index of productivity and three forecasts, of hours, water and cleaner.',
    parameters: [WALLS, ACTUALS, ZONE, FACTORS, HEADINGS],
    result: 'matrix',
    unit: 'text',
    rule: 'earned value: what is done earns its budget; index = earned / actual; forecasts: budget / index, actual + budget - earned, and each task at its own index; a task without areas earns what is rinsed or washed of the zone; nothing counts as done twice',
    example: '=WASH.PROGRESS(Walls[#All],Actuals[#All],,Factors[#All])',
  },
  RATES: {
    description:
      'Spills the rates that recorded work shows, how far to trust them, and the factor that each would replace.',
    parameters: [ACTUALS, WALLS, FACTORS, HEADINGS],
    result: 'matrix',
    unit: 'text',
    rule: 'unit times are log-normal; the value in force is worth rates.prior entries, and each entry weighs by its area; an entry is compared with what the estimate allows for its area; outliers are named, never dropped',
    example: '=WASH.RATES(Actuals[#All],Walls[#All],Factors[#All])',
  },
  PATCH: {
    description:
      'Spills the largest area to wash at one time, the wait, and the contact of its first and last point.',
    parameters: [
      one('applyRate', 'Area covered with cleaner in a minute: ft2/min or m2/min', false),
      one('rinseRate', 'Area rinsed in a minute: ft2/min or m2/min', false),
      one('leastDwell', 'Minimum dwell, min', false),
      one('mostDwell', 'Maximum dwell, min', false),
      one('timeToDry', 'Time until the cleaner dries, min; left out, drying is ignored'),
      UNITS,
      one('scrub', 'Scrubbing of the whole team: min/ft2 or min/m2; left out, none'),
      one('leastPatch', 'Smallest patch: ft2 or m2; left out, none'),
      one('mostPatch', 'Largest patch: ft2 or m2; left out, none'),
    ],
    result: 'matrix',
    unit: 'text',
    rule: 'all contact times within the dwell, scrubbing included, and rinsed before the cleaner dries',
    example: '=WASH.PATCH(10,8,3,5)',
  },
  NOZZLE: {
    description: 'Spills flow, fan width and reaction force of a nozzle.',
    parameters: [
      one('number', 'Number of the nozzle', false),
      one('pressure', 'Pressure at the nozzle: psi or kPa', false),
      one('angle', 'Fan angle, degrees'),
      one('distance', 'Distance from the face: in. or mm'),
      UNITS,
    ],
    result: 'matrix',
    unit: 'text',
    rule: 'flow = number * sqrt(pressure / 4000 psi) gal/min; width = 2 * distance * tan(angle / 2); force = 0.0526 * flow * sqrt(pressure) lbf',
    example: '=WASH.NOZZLE(10,400,40,12)',
  },
  DAYPLAN: {
    description:
      'Spills a plan by working day: zone, walls of the day, people, hours, what to bring and what to wait for.',
    parameters: question,
    result: 'matrix',
    unit: 'text',
    rule: 'zones in their order, in each the walls from the top down, each day filled to the end of its shift; cleaner and water of the walls worked on, film and tape on the first day of a zone',
    example: '=WASH.DAYPLAN(Walls[#All],,Factors[#All])',
  },
  BIDPAGE: {
    description:
      'Spills a page to send: scope in sentences, quantities, what is included and what is not, alternates, clarifications, price and rates.',
    parameters: [
      WALLS,
      ZONE,
      FACTORS,
      range('alternates', 'Table of alternates, as in ALTERNATES; left out, none is named', true),
      HEADINGS,
    ],
    result: 'matrix',
    unit: 'text',
    rule: 'the walls and factors in force; what has no price is by others',
    example: '=WASH.BIDPAGE(Walls[#All],,Factors[#All])',
  },
  DRYING: {
    description: 'Spills evaporation and time to dry of a wet film.',
    parameters: [
      one('air', 'Air temperature: degrees F or C', false),
      one('surface', 'Temperature of the face: degrees F or C', false),
      one('humidity', 'Relative humidity as a fraction, 0 to 1', false),
      one('wind', 'Wind: mph or km/h', false),
      one('film', 'Film of water on the face, mm'),
      UNITS,
    ],
    result: 'matrix',
    unit: 'text',
    rule: 'evaporation equation of ACI 305R (Uno 1998), for level concrete, about 40% either way; on a wall an extrapolation',
    example: '=WASH.DRYING(68,68,0.5,6)',
  },
};

/** The one list of the worksheet functions: it feeds functions.json, the README and the pane's help. */
export const catalogue: readonly (FunctionEntry & { readonly name: FunctionName })[] = (
  Object.keys(entries) as FunctionName[]
).map((name) => ({ name, ...entries[name] }));

function choicesOf({ name, choices }: Parameter): readonly string[] | undefined {
  return name === 'quantity' ? traceNames : choices;
}

function enumId(called: string, parameter: Parameter): string {
  return parameter.name === 'part' ? `${called}.part` : parameter.name;
}

/** The lists of words that the formula bar offers; a version of Excel that knows none goes without. */
function enums(): object[] {
  const lists = new Map(
    catalogue.flatMap(({ name, parameters }) =>
      parameters.flatMap((parameter) => {
        const choices = choicesOf(parameter);
        return choices ? [[enumId(name, parameter), choices] as const] : [];
      }),
    ),
  );
  return [...lists].map(([id, choices]) => ({
    id,
    type: 'string',
    values: choices.map((choice) => ({ name: choice, stringValue: choice })),
  }));
}

/**
 * The list as the host's metadata file functions.json has it.
 * @param address where the add-in is served from
 * @returns the object to write as JSON
 */
export function metadata(address: string): object {
  return {
    // Without it an error anywhere in a range, in a column that is not ours too, is the result of every formula.
    allowErrorForDataTypeAny: true,
    functions: catalogue.map(({ name, description, parameters, result }) => ({
      id: name,
      name,
      description,
      helpUrl: `${address}/help.html#${name.toLowerCase()}`,
      parameters: parameters.map((parameter) => ({
        name: parameter.name,
        description: parameter.description,
        // A list of words goes with a text alone.
        type: choicesOf(parameter) ? 'string' : parameter.type,
        dimensionality: parameter.dimensionality,
        ...(parameter.optional ? { optional: true } : {}),
        ...(choicesOf(parameter) ? { customEnumId: enumId(name, parameter) } : {}),
      })),
      result: { type: 'any', dimensionality: result },
    })),
    enums: enums(),
  };
}
