import { unitWritten, type StatedUnit } from '../quantity/stated-unit';
import { shownUnit } from '../quantity/shown-unit';
import { unitOf, type Kind, type System } from '../quantity/systems';

/** A heading taken apart. */
export interface HeadingRead {
  /** What stands beside the unit. */
  readonly bare: string;
  readonly unit: StatedUnit;
}

const MOST_WORDS = 3;
const OUTER_BRACKETS = /[([{](.+)[)\]}]/s;
const FIRST_BRACKETS = /[([{]([^)\]}]+)[)\]}]/;

/**
 * The unit that the heading of a column of numbers states: in brackets, at its end or at its beginning.
 * @param heading the heading as typed
 * @param kind what the column measures; undefined for one without numbers
 * @returns what it states; undefined where it states none
 */
export function unitInHeading(heading: string, kind: Kind | undefined): HeadingRead | undefined {
  if (kind === undefined) return undefined;
  for (const brackets of [OUTER_BRACKETS, FIRST_BRACKETS]) {
    const [whole = '', inside = ''] = brackets.exec(heading) ?? [];
    const bracketed = unitWritten(inside);
    if (bracketed) return { bare: heading.replace(whole, ' '), unit: bracketed.unit };
  }
  // A kg/m2 is one word, a Sq. Ft. two.
  const words = heading.split(/[\s,;:.–—-]+/).filter((word) => word !== '');
  for (let count = Math.min(MOST_WORDS, words.length); count > 0; count--) {
    const last = unitWritten(words.slice(-count).join(' '));
    // A letter at the end may be the name of a wall; only where it measures what the column does it is a unit.
    if (last && (!last.isWeak || last.unit.kind === kind)) {
      return { bare: words.slice(0, -count).join(' '), unit: last.unit };
    }
    const first = unitWritten(words.slice(0, count).join(' '));
    if (first && !first.isWeak) return { bare: words.slice(count).join(' '), unit: first.unit };
  }
  return undefined;
}

/**
 * Whether the numbers below a heading are in the unit in force.
 * @param unit the unit that the heading states
 * @param kind what the column measures
 * @param system the display system
 * @returns true where they are
 */
export function isInForce(unit: StatedUnit, kind: Kind | undefined, system: System): boolean {
  return unit.kind === kind && unit.systems.includes(system);
}

/**
 * What to do about a heading whose unit is not in force.
 * @param unit the unit that the heading states
 * @param column the column that it stands for
 * @param column.name its name
 * @param column.kind what it measures
 * @param system the display system
 * @returns what is accepted instead
 */
export function acceptedUnit(
  unit: StatedUnit,
  { name, kind = 'count' }: { readonly name: string; readonly kind?: Kind },
  system: System,
): string {
  const wanted = shownUnit(unitOf(kind, system));
  const inForce = wanted === '1' ? 'a plain number' : `${wanted}, with the factor units at ${system}`;
  if (unit.kind !== kind) return `${inForce}: head another column ${name}, or change the heading`;
  const [other] = unit.systems;
  if (other !== undefined) {
    return `${inForce}: set the factor units to ${other}, or convert the numbers and change the heading`;
  }
  const size = unit.size === undefined ? '' : ` (1 ${unit.shown} is ${shownSize(unit.size)})`;
  return `${inForce}: convert the numbers${size} and change the heading`;
}

function shownSize({ of, unit }: { of: number; unit: string }): string {
  return `${of < 1 ? `1/${String(Math.round(1 / of))}` : String(of)} ${unit}`;
}
