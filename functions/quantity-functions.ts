import { addedQuantities, type QuantityId } from '../src/estimate/quantities';
import { answer, FACTORS, HEADINGS, readChoice, readQuestion, WALLS, ZONE } from './arguments';
import { quantityCell } from './cells';
import type { Parameter, WorksheetFunction } from './worksheet-function';

/** The parts of water, by the name that a user gives. */
export const waterParts = {
  prewet: 'preWetWater',
  mix: 'mixWater',
  rinse: 'rinseWater',
} as const satisfies Record<string, QuantityId>;

/** The parts of the crew-hours, by the name that a user gives. */
export const hourParts = {
  scrape: 'scrapeHours',
  mask: 'maskHours',
  prewet: 'prewetHours',
  apply: 'applyHours',
  scrub: 'scrubHours',
  rinse: 'rinseHours',
  unmask: 'unmaskHours',
  move: 'moveHours',
  setup: 'setupHours',
} as const satisfies Record<string, QuantityId>;

interface Said {
  readonly name: string;
  readonly quantity: QuantityId;
  readonly parts?: Readonly<Record<string, QuantityId>>;
  readonly description: string;
  readonly rule: string;
  readonly example: string;
}

function quantityFunction({ name, quantity, parts, description, rule, example }: Said): WorksheetFunction {
  const part: Parameter[] = parts
    ? [
        {
          name: 'part',
          description: `One part: ${Object.keys(parts).join(', ')}; empty for all`,
          type: 'any',
          dimensionality: 'scalar',
          optional: true,
        },
      ]
    : [];
  const { kind } = addedQuantities[quantity];
  return {
    name,
    description,
    parameters: [WALLS, ZONE, FACTORS, ...part, HEADINGS],
    result: 'scalar',
    unit: kind,
    rule,
    example,
    run: ([walls, zone, factors, ...rest]) => {
      const [chosen, headings] = parts ? rest : [undefined, rest[0]];
      const wanted = parts ? readChoice(chosen, 'part', Object.keys(parts)) : undefined;
      const id = wanted === undefined ? quantity : (parts?.[wanted] ?? quantity);
      const question = readQuestion(walls, zone, factors, headings);
      const { totals, finding } = answer(question);
      return quantityCell(totals[id], kind, question.factors.system, finding);
    },
  };
}

/** The functions that give one quantity of a zone or of the job. */
export const quantityFunctions: readonly WorksheetFunction[] = [
  {
    name: 'WATER',
    quantity: 'water',
    parts: waterParts,
    description: 'Water volume: pre-wet, mix and rinse.',
    rule: 'square-root-of-time uptake and run-off of each pass; dilution of the cleaner; nozzle flow by rinse rate',
    example: '=WASH.WATER(Walls[#All],"Library south",Factors[#All],"rinse")',
  } as const,
  {
    name: 'MASKING',
    quantity: 'maskingArea',
    description: 'Masking area with laps and fixtures.',
    rule: 'openings, masked rows, a band of laps along each perimeter, and each fixture',
    example: '=WASH.MASKING(Walls[#All],"Library south")',
  } as const,
  {
    name: 'TAPE',
    quantity: 'tape',
    description: 'Tape length.',
    rule: 'perimeters and their waste',
    example: '=WASH.TAPE(Walls[#All],"Library south")',
  } as const,
  {
    name: 'CREWHOURS',
    quantity: 'crewHours',
    parts: hourParts,
    description: 'Crew-hours; one person for one hour is one.',
    rule: 'scraping, masking, pre-wet, applying, scrubbing, rinsing, unmasking, moves and set-up',
    example: '=WASH.CREWHOURS(Walls[#All],"Library south",Factors[#All],"scrub")',
  } as const,
  {
    name: 'CLEANER',
    quantity: 'concentrate',
    description: 'Volume of cleaner concentrate.',
    rule: 'area by coverage times coats, in a mix of 1 part to n parts of water',
    example: '=WASH.CLEANER(Walls[#All],"Library south")',
  } as const,
].map(quantityFunction);
