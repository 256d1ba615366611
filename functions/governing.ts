import { className } from '../src/rules/cleaner-classes';
import { badInput, nothingHere } from '../src/quantity/problem';
import { governZone, type Governing } from '../src/govern/govern-zone';
import { FACTORS, HEADINGS, readQuestion, WALLS, ZONE, type Question } from './arguments';
import type { WorksheetFunction } from './worksheet-function';

const parameters = [WALLS, ZONE, FACTORS, HEADINGS];

interface Governed {
  readonly name: string;
  readonly governing: Governing;
}

/**
 * The decisions of the zones asked for, those left out where nothing is washed.
 * @param question factors and zones
 * @returns the zones with their decisions, one at least
 * @throws {WashdownError} where every row is masked
 */
export function governed({ factors, zones }: Question): Governed[] {
  const found = zones.flatMap((zone) => {
    const governing = governZone(zone.rows, factors);
    return governing ? [{ name: zone.name, governing }] : [];
  });
  if (found.length === 0) throw nothingHere(NOTHING_WASHED);
  return found;
}

/** What is said where nothing is left to wash. */
export const NOTHING_WASHED = 'Nothing is washed here: every row is masked.';

/** The class to use. */
export const classFunction: WorksheetFunction = {
  name: 'CLASS',
  description:
    'Cleaner class to use in a zone: the gentlest that does the work, never above the governing ceiling.',
  parameters,
  result: 'scalar',
  unit: 'class',
  rule: 'lesser of the governing ceiling and the greatest need',
  example: '=WASH.CLASS(Walls[#All],"Library south")',
  run: ([walls, zone, factors, headings]) => {
    const decisions = governed(readQuestion(walls, zone, factors, headings));
    const classes = new Set(decisions.map(({ governing }) => governing.classToUse));
    const [only] = classes;
    if (classes.size > 1 || only === undefined) {
      const each = decisions.map(
        ({ name, governing: { classToUse } }) => `${name} ${String(classToUse)} (${className(classToUse)})`,
      );
      throw badInput(
        `The zones are washed with different classes: ${each.join(', ')}. Accepted: the name of one zone.`,
      );
    }
    return only;
  },
};

/** The governing ceiling. */
export const governingFunction: WorksheetFunction = {
  name: 'GOVERNING',
  description: 'Governing ceiling: the strongest class that the weakest unmasked material allows.',
  parameters,
  result: 'scalar',
  unit: 'class',
  rule: 'least of the ceilings of the unmasked rows',
  example: '=WASH.GOVERNING(Walls[#All],"Library south")',
  run: ([walls, zone, factors, headings]) => {
    const decisions = governed(readQuestion(walls, zone, factors, headings));
    return Math.min(...decisions.map(({ governing }) => governing.ceiling));
  },
};

/** The materials that set the ceiling. */
export const governorFunction: WorksheetFunction = {
  name: 'GOVERNOR',
  description: 'Material or materials that set the governing ceiling.',
  parameters,
  result: 'scalar',
  unit: 'text',
  rule: 'unmasked materials whose ceiling is the least',
  example: '=WASH.GOVERNOR(Walls[#All],"Library south")',
  run: ([walls, zone, factors, headings]) => {
    const decisions = governed(readQuestion(walls, zone, factors, headings));
    const least = Math.min(...decisions.map(({ governing }) => governing.ceiling));
    const weakest = decisions.filter(({ governing }) => governing.ceiling === least);
    return [...new Set(weakest.flatMap(({ governing }) => governing.governors.map(({ name }) => name)))].join(
      ', ',
    );
  },
};
