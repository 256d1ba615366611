import type { WallRow } from './wall-row';
import type { Zone } from './zones';

/**
 * A zone that was read by kinds. Its rows one by one are read when somebody first asks for them. Neither they nor the
 * kinds are fields of its own: a copy by spreading has to bring its own rows, and has no kinds that belong to others.
 */
export class ZoneOfKinds implements Zone {
  readonly name: string;
  readonly below: readonly WallRow[];
  readonly #kinds: readonly WallRow[];
  readonly #readRows: () => readonly WallRow[];

  /**
   * Takes over a zone.
   * @param byKinds the zone with its kinds as rows
   * @param readRows reads its rows one by one
   */
  constructor(byKinds: Zone, readRows: () => readonly WallRow[]) {
    this.name = byKinds.name;
    this.below = byKinds.below;
    this.#kinds = byKinds.rows;
    this.#readRows = readRows;
  }

  /**
   * One row with the sums for all of a kind.
   * @returns the kinds
   */
  get kinds(): readonly WallRow[] {
    return this.#kinds;
  }

  /**
   * The rows one by one.
   * @returns the rows
   */
  get rows(): readonly WallRow[] {
    return this.#readRows();
  }
}
