import type { Material } from './materials';

/** The groups of materials whose rows are all bound by cement or lime. */
const groups: readonly Material['group'][] = ['block', 'cast'];

/** The stones that are. */
export const calcareousStones: readonly string[] = ['limestone', 'marble'];

/**
 * Whether a material is concrete or other masonry that holds calcium, which no acidic cleaner is used on. Source: UFGS
 * 04900, 3.2.2.
 * @param material the material
 * @returns true for block, cast units, stucco, limestone and marble
 */
export function isCalcareous({ group, code }: Pick<Material, 'group' | 'code'>): boolean {
  return groups.includes(group) || calcareousStones.includes(code);
}
