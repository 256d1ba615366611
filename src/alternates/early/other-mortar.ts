import { DEFAULT_MORTAR, mortarTypes } from '../../rules/mortars';
import { isToBeClean, setting, type EarlyChoice } from './early-choice';

/**
 * Each mortar of the bid one type weaker, and one type stronger.
 * @param bid the bid as it is
 * @returns the alternates, the strongest mortar first
 */
export const otherMortar: EarlyChoice = ({ zones }) => {
  const rows = zones.flatMap(({ zone }) => zone.rows).filter(isToBeClean);
  return mortarTypes.flatMap((type, place) => {
    const laid = rows.filter(({ mortar }) => (mortar ?? DEFAULT_MORTAR) === type);
    if (laid.length === 0) return [];
    // The types stand in the order of their strength.
    const others = [mortarTypes[place + 1], mortarTypes[place - 1]].filter((other) => other !== undefined);
    return others.map((other) => ({
      name: `Mortar Type ${other} for Type ${type}`,
      edits: setting(laid, 'mortar', other),
      notes: [],
    }));
  });
};
