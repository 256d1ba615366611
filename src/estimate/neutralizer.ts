import { GENTLEST_ACID, type CleanerClass } from '../rules/cleaner-classes';
import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { RowRecord } from '../trace/recorder';

/** The alkalis that the acid of a cleaner can be neutralized with: sodium bicarbonate and soda ash. */
export type Alkali = 'NaHCO3' | 'Na2CO3';

/** The acid of a concentrate, and what it is neutralized with. */
export interface AcidUse {
  /** The class that the concentrate is of. */
  readonly class: 2 | 3;
  /** kg/L */
  readonly density: number;
  /** share of the mass that is acid, 0 to 1 */
  readonly fraction: number;
  /** share of the acid neutralized with soda ash, 0 to 1 */
  readonly sodaAshShare: number;
  /** share of the runoff that is collected, 0 to 1 */
  readonly captured: number;
}

/**
 * Moles of acid in a concentrate, as HCl.
 * @param concentrate volume, L
 * @param density density of the concentrate, kg/L
 * @param massFraction share of its mass that is acid, 0 to 1
 * @returns mol
 */
export function acidMoles(concentrate: number, density: number, massFraction: number): number {
  return (concentrate * density * massFraction) / constants.molarMassHCl.value;
}

/**
 * Mass of alkali that neutralizes an amount of acid: HCl + NaHCO3, or 2 HCl + Na2CO3.
 * @param acid amount of HCl, mol
 * @param alkali the alkali
 * @returns kg
 */
export function alkaliMass(acid: number, alkali: Alkali): number {
  const { acidPerNaHCO3, acidPerNa2CO3, molarMassNaHCO3, molarMassNa2CO3 } = constants;
  const [ratio, molarMass] =
    alkali === 'NaHCO3' ? [acidPerNaHCO3, molarMassNaHCO3] : [acidPerNa2CO3, molarMassNa2CO3];
  return (acid / ratio.value) * molarMass.value;
}

/**
 * The acid of a class's concentrate; the safety data sheet's values go in the factors.
 * @param classToUse the class to use
 * @param factors the factors in force
 * @returns the acid, or undefined where the class is none
 */
export function acidUse(classToUse: CleanerClass, factors: FactorsInForce): AcidUse | undefined {
  if (classToUse < GENTLEST_ACID) return undefined;
  const of = classToUse as 2 | 3;
  return {
    class: of,
    density: factors.value(`acid.${of}.density`),
    fraction: factors.value(`acid.${of}.fraction`),
    sodaAshShare: factors.value('neutralizer.sodaAsh'),
    captured: factors.value('runoff.captured'),
  };
}

/**
 * Alkali that neutralizes the acid in the runoff that is collected. What the wall uses up is counted as still there.
 * @param concentrate volume, L
 * @param use the acid and what it is neutralized with; undefined where the class is no acid
 * @param rec takes down the lines
 * @returns kg of each alkali
 */
export function neutralizer(
  concentrate: number,
  use: AcidUse | undefined,
  rec?: RowRecord,
): { bicarbonate: number; sodaAsh: number } {
  if (use === undefined) {
    rec?.nothing('bicarbonate#', 'mass', 'noAcid');
    rec?.nothing('sodaAsh#', 'mass', 'noAcid');
    return { bicarbonate: 0, sodaAsh: 0 };
  }
  const acid = acidMoles(concentrate, use.density, use.fraction) * use.captured;
  const bicarbonate = alkaliMass(acid * (1 - use.sodaAshShare), 'NaHCO3');
  const sodaAsh = alkaliMass(acid * use.sodaAshShare, 'Na2CO3');
  if (rec) {
    rec.line('acid', acid, { class: use.class });
    rec.line('bicarbonate', bicarbonate);
    rec.line('sodaAsh', sodaAsh);
  }
  return { bicarbonate, sodaAsh };
}
