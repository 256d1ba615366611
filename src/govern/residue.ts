import { cleanerClasses, STRONGEST_CLASS, type CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import { assumedResidue, residues, type Residue } from '../rules/residues';
import type { RowRecord } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';
import { effortOf, effortsOf, type Efforts } from './effort';

/** How residue, cleaner and mortar add up to work for the brush. */
export interface ResidueRules {
  /** Share that each class leaves, from clear water up. */
  readonly left: readonly number[];
  /** Residue after scraping, against heavy. */
  readonly load: Readonly<Record<Residue, number>>;
  readonly efforts: Efforts;
  /** What the brush takes anyway. */
  readonly least: number;
}

/**
 * The rules in force.
 * @param factors the factors in force
 * @returns what each class leaves of each residue, efforts by mortar, and what the brush takes anyway
 */
export function residueRules(factors: FactorsInForce): ResidueRules {
  return {
    left: cleanerClasses.map((row) => factors.value(`left.${row.class}`)),
    load: Object.fromEntries(residues.map((name) => [name, factors.value(`load.${name}`)])) as Record<
      Residue,
      number
    >,
    efforts: effortsOf(factors),
    least: factors.value('scrub.least'),
  };
}

/**
 * The residue that a row is worked out with: what was seen, or what brushing leads one to expect.
 * @param row the wall row
 * @returns the residue
 */
export function residueOf(row: WallRow): Residue {
  return row.residue ?? assumedResidue(row.brushed);
}

/**
 * What a class of cleaner leaves to the brush: left * load * effort. An assumption over the strengths of ASTM C270.
 * @param row the wall row
 * @param withClass the class
 * @param rules the rules in force
 * @param rec takes down the lines
 * @returns a share of heavy residue of Type N mortar under clear water; above 1 for stronger mortar
 */
export function leftToBrush(
  row: WallRow,
  withClass: CleanerClass,
  rules: ResidueRules,
  rec?: RowRecord,
): number {
  const residue = residueOf(row);
  const left = (rules.left[withClass] ?? NaN) * rules.load[residue] * effortOf(row, rules.efforts, rec);
  rec?.line(row.residue ? 'leftToBrush' : 'leftToBrushAssumed', left, { class: withClass, residue });
  return left;
}

/**
 * The gentlest class that leaves no more than the brush takes anyway; where none does, the strongest.
 * @param row the wall row
 * @param rules the rules in force
 * @param rec takes down the lines
 * @returns the class that the row needs
 */
export function needClass(row: WallRow, rules: ResidueRules, rec?: RowRecord): CleanerClass {
  const enough = cleanerClasses.find((candidate) => leftToBrush(row, candidate.class, rules) <= rules.least);
  const need = enough?.class ?? STRONGEST_CLASS;
  if (rec) {
    effortOf(row, rules.efforts, rec);
    const residue = residueOf(row);
    const cases = cleanerClasses
      .slice(0, -1)
      .map(({ class: of }) => `left_${of} * load_${residue} * effort# <= scrub_least ? ${of} : `);
    rec.line(row.residue ? 'needClass' : 'needClassAssumed', need, `${cases.join('')}${STRONGEST_CLASS}`);
  }
  return need;
}
