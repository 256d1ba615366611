import { STRONGEST_CLASS } from '../rules/cleaner-classes';
import { DEFAULT_MORTAR, isStrong } from '../rules/mortars';
import type { FactorsInForce } from '../rules/read-factors';
import { foretoldResidue, type Residue } from '../rules/residues';
import type { Recorder } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';

/** The classes that residue and mortar call for. */
export interface Needs extends Readonly<Record<Residue, number>> {
  readonly strongMortar: number;
}

/**
 * The needs in force.
 * @param factors the factors in force
 * @returns the class for each residue, and what strong mortar adds
 */
export function needsOf(factors: FactorsInForce): Needs {
  return {
    light: factors.value('need.light'),
    moderate: factors.value('need.moderate'),
    heavy: factors.value('need.heavy'),
    strongMortar: factors.value('need.strongMortar'),
  };
}

/**
 * The residue that a row is reckoned with: what was seen, or what brushing foretells.
 * @param row the wall row
 * @returns the residue
 */
export function residueOf(row: WallRow): Residue {
  return row.residue ?? foretoldResidue(row.brushed);
}

/**
 * The class that would take the residue of a row off by itself.
 * @param row the wall row
 * @param needs the needs in force
 * @param rec takes down the lines
 * @returns a class from 0 to 3
 */
export function needClass(row: WallRow, needs: Needs, rec?: Recorder): number {
  const residue = residueOf(row);
  const strong = isStrong(row.mortar ?? DEFAULT_MORTAR);
  const need = Math.min(STRONGEST_CLASS, needs[residue] + (strong ? needs.strongMortar : 0));
  if (rec) {
    const sum = strong ? `need_${residue} + need_strongMortar` : `need_${residue}`;
    rec.line(
      'need#',
      `min(strongestClass, ${sum})`,
      need,
      'class',
      row.residue ? 'needClass' : 'needClassForetold',
    );
  }
  return need;
}
