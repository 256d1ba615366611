import type { AccessKind } from '../rules/access-kinds';
import type { MortarType } from '../rules/mortars';
import type { MaterialInForce } from '../rules/read-factors';
import type { Residue } from '../rules/residues';
import type { Mask } from './masks';

/** One row of wall data, read and checked, in base units. */
export interface WallRow {
  /** Row within the range, its header being row 1. */
  readonly row: number;
  readonly wall: string;
  readonly zone: string;
  /** Order from the top, 1 = highest; 0 where not stated. */
  readonly level: number;
  readonly material: MaterialInForce;
  /** Gross face area, m2. */
  readonly area: number;
  /** m; 0 where not stated. */
  readonly height: number;
  /** m2 */
  readonly openings: number;
  /** m; 0 where not stated. */
  readonly openingPerimeter: number;
  /** Sum of the edges of masked rows that are put together as one, m; left out for a row by itself. */
  readonly edge?: number | undefined;
  readonly fixtures: number;
  /** Undefined where not stated. */
  readonly mortar: MortarType | undefined;
  /** Undefined where not stated. */
  readonly residue: Residue | undefined;
  readonly brushed: boolean;
  /** Whether the daily brush-down is priced in this bid. */
  readonly brushPriced: boolean;
  /** Whether the row says if it was brushed down. */
  readonly brushedStated: boolean;
  /** Days since laid; 0 where not stated. */
  readonly age: number;
  /** Covered while its zone is washed: its mask is yes or only. */
  readonly masked: boolean;
  /** As the row states it. */
  readonly mask: Mask;
  /** The row cannot be masked. */
  readonly neverMasked: boolean;
  /** How it is reached; undefined where not stated. */
  readonly access: AccessKind | undefined;
  /** Measured uptake of the first minute, kg/m2; 0 where the material's holds. */
  readonly suction: number;
  /** The zone whose rinse runs over the row; empty where not stated. */
  readonly receives: string;
}

/** The zone of the rows that state none. */
export const NO_ZONE = '(no zone)';
