import { isToBeClean, setting, type EarlyChoice } from './early-choice';

/**
 * Brush the walls down each day, at its own labor (`rate.brush`), where it is not done yet and no residue was seen:
 * what was seen counts, whether it was brushed or not.
 * @param bid the bid as it is
 * @returns one alternate, or none where it applies to no wall
 */
export const brushDownDaily: EarlyChoice = ({ zones }) => {
  const rows = zones
    .flatMap(({ zone }) => zone.rows)
    .filter((row) => isToBeClean(row) && !row.brushed && row.residue === undefined);
  if (rows.length === 0) return [];
  const notes = ['The brushing is priced in this bid, by the factor rate.brush.'];
  return [{ name: 'Brush down daily', edits: setting(rows, 'brushed', 'priced'), notes }];
};
