import { STRONGEST_CLASS } from '../../rules/cleaner-classes';
import { netArea } from '../../walls/net-area';
import type { WallRow } from '../../walls/wall-row';
import { setting, type EarlyChoice } from './early-choice';

/**
 * Each masked masonry row washed with its zone.
 * @param bid the bid as it is
 * @returns the alternates, in the order of the rows
 */
export const washMasked: EarlyChoice = ({ zones }) =>
  zones
    .flatMap(({ zone }) => zone.rows)
    .filter((row) => row.masked && row.material.masonry && netArea(row) > 0)
    .map((row) => ({
      name: `Wash ${row.wall} with its zone`,
      edits: setting([row], 'masked', 'no'),
      notes: [],
    }));

/**
 * Each row that sets the ceiling of a zone masked, and washed afterwards; not the last bare row of a zone.
 * @param bid the bid as it is
 * @returns the alternates, in the order of the zones
 */
export const maskGovernors: EarlyChoice = ({ rows, zones }) => {
  const isBare = (row: WallRow): boolean => !row.masked && netArea(row) > 0;
  const governing = zones.flatMap(({ zone, governing: set }) =>
    set === undefined || set.ceiling === STRONGEST_CLASS
      ? []
      : [...zone.rows, ...zone.below].filter((row) => isBare(row) && set.governors.includes(row.material)),
  );
  return [...new Set(governing)]
    .filter((row) => !row.neverMasked)
    .filter((row) => rows.some((other) => other !== row && other.zone === row.zone && isBare(other)))
    .map((row) => ({ name: `Mask ${row.wall}`, edits: setting([row], 'masked', 'yes'), notes: [] }));
};
