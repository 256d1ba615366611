import type { WallRow } from './wall-row';
import type { Zone } from './zones';

/**
 * A zone that was read by groups. Its rows one by one are read when somebody first asks for them. Neither they nor the
 * groups are fields of its own: a copy by spreading has to bring its own rows, and has no groups that belong to others.
 */
export class ZoneOfGroups implements Zone {
  readonly name: string;
  readonly below: readonly WallRow[];
  readonly #groups: readonly WallRow[];
  readonly #readRows: () => readonly WallRow[];

  /**
   * Takes over a zone.
   * @param byGroups the zone with its groups as rows
   * @param readRows reads its rows one by one
   */
  constructor(byGroups: Zone, readRows: () => readonly WallRow[]) {
    this.name = byGroups.name;
    this.below = byGroups.below;
    this.#groups = byGroups.rows;
    this.#readRows = readRows;
  }

  /**
   * One row with the sums for all of a group.
   * @returns the groups
   */
  get groups(): readonly WallRow[] {
    return this.#groups;
  }

  /**
   * The rows one by one.
   * @returns the rows
   */
  get rows(): readonly WallRow[] {
    return this.#readRows();
  }
}
