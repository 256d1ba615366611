import { constants } from '../rules/constants';

/** The alkalis that the acid of a cleaner can be neutralised with. */
export type Alkali = 'NaHCO3' | 'Na2CO3';

/**
 * Moles of acid in a concentrate, reckoned as HCl.
 * @param concentrate volume, L
 * @param density density of the concentrate, kg/L
 * @param massFraction share of its mass that is acid, 0 to 1
 * @returns mol
 */
export function acidMoles(concentrate: number, density: number, massFraction: number): number {
  return (concentrate * density * massFraction) / constants.molarMassHCl.value;
}

/**
 * Mass of alkali that neutralises an amount of acid: HCl + NaHCO3, or 2 HCl + Na2CO3.
 * @param acid amount of HCl, mol
 * @param alkali the alkali
 * @returns kg
 */
export function alkaliMass(acid: number, alkali: Alkali): number {
  return (acid / constants[`acidPer${alkali}`].value) * constants[`molarMass${alkali}`].value;
}
