import { toBase } from '../quantity/conversions';
import { DIGITS, tidy } from '../quantity/shown-number';
import { shownUnit } from '../quantity/shown-unit';
import { show, unitOf, type System } from '../quantity/systems';
import { STRONGEST_CLASS } from './cleaner-classes';
import { factorGroups, type FactorGroupId } from './factor-groups';
import { factors, type Factor } from './factors';
import { BY_NEED, CHOSEN_CLASS, shownStart, UNITS } from './read-factors';

/** A factor as a form shows it. */
export interface FactorLine {
  readonly id: string;
  /** Its unit; empty where it has none. */
  readonly unit: string;
  /** Its starting value; empty where there is none. */
  readonly start: number | string;
  readonly least: number | string;
  readonly most: number | string;
  /** The words that are accepted in place of a number. */
  readonly choices: readonly string[];
  readonly meaning: string;
  /** What published figures for like work or like goods say; empty where none were found. */
  readonly bracket: string;
}

/** A group of factors under its title. */
export interface FactorGroup {
  readonly title: string;
  readonly lines: readonly FactorLine[];
}

/** The choice of units, which stands before all groups. */
export const unitsLine: FactorLine = {
  id: UNITS,
  unit: '',
  start: 'US',
  least: '',
  most: '',
  choices: ['US', 'SI'],
  meaning: 'units of the wall rows, the factors and the results: US or SI',
  bracket: '',
};

/** The choice of a cleaner class, which stands with what the label says. */
export const classLine: FactorLine = {
  id: CHOSEN_CLASS,
  unit: '',
  start: BY_NEED,
  least: 0,
  most: STRONGEST_CLASS,
  choices: [],
  meaning:
    'cleaner class of your own choice, never above the ceiling; by need: the one that takes the fewest labor-hours',
  bracket: '',
};

/**
 * Every factor under the title of its group, in the units of a system.
 * @param system the display system
 * @returns the groups in the order of a form; the choice of units is none of them
 */
export function factorLines(system: System): FactorGroup[] {
  return (Object.keys(factorGroups) as FactorGroupId[]).map((group) => ({
    title: factorGroups[group],
    lines: [
      ...(group === 'label' ? [classLine] : []),
      ...factors.filter((factor) => factor.group === group).map((factor) => lineOf(factor, system)),
    ],
  }));
}

function lineOf(factor: Factor, system: System): FactorLine {
  const { id, kind, unit, least, most, positive, choices = [], meaning, bracket = '' } = factor;
  const bound = (value: number): number => tidy(show(toBase(value, unit), kind, system), DIGITS.typed);
  const label = unitOf(kind, system);
  const start = shownStart(factor, system);
  const hasBounds = choices.length === 0 && factor.date === undefined;
  return {
    id,
    unit: label === '1' ? '' : shownUnit(label),
    start: typeof start === 'number' ? tidy(start, DIGITS.typed) : start,
    least: hasBounds ? (positive && least === 0 ? 'above 0' : bound(least)) : '',
    most: hasBounds ? bound(most) : '',
    choices,
    meaning,
    bracket,
  };
}
