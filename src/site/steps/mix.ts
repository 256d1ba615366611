import { acidOnCalcareous } from '../../hazards/cleaner-on-wall';
import { isAcid } from '../../hazards/washed';
import { className, type CleanerClass } from '../../rules/cleaner-classes';
import type { WallRow } from '../../walls/wall-row';
import { materialsNamed, wallsNamed } from '../named';
import type { StepBuilder } from '../step';
import { rowsOf } from '../washes';
import { mixFacts } from './wash-facts';
import { applyHold } from './weather-hold';

/** The cleaner is mixed as its label says. */
export const mix: StepBuilder = ({ zone, factors, first }) => {
  if (first === undefined || first.class === 0) return undefined;
  const among = new Set(rowsOf(first));
  return {
    id: 'mix',
    title: `Mix the cleaner: class ${String(first.class)}, ${className(first.class)}`,
    todo: mixTodo(
      first.class,
      acidOnCalcareous(zone).filter((row) => among.has(row)),
    ),
    facts: mixFacts(first, factors),
    hold: applyHold(zone, factors),
    mayOverrule: true,
    source: 'practice',
    kind: 'common practice',
  };
};

/**
 * How a cleaner is mixed, in sentences.
 * @param used its class
 * @param calcareous the walls that meet an acid though they hold calcium
 * @returns what to do
 */
export function mixTodo(used: CleanerClass, calcareous: readonly WallRow[]): string[] {
  return [
    "Check the drum against the label and the safety data sheet: the label's dilution holds.",
    isAcid(used)
      ? 'Put the water in first, then pour the concentrate into it. Wear what the safety data sheet names.'
      : 'Wear what the safety data sheet names.',
    'Mix no more than the next patches take, and label the container.',
    ...(calcareous.length > 0
      ? [
          `Mix no acid for ${materialsNamed(calcareous)} (${wallsNamed(calcareous)}) without written approval from the unit manufacturer and an accepted sample.`,
        ]
      : []),
  ];
}
