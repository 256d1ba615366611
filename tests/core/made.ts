import { estimateJob, type JobEstimate, type RowTaker, type ZoneEstimate } from '../../src/estimate/schedule';
import { toBase } from '../../src/quantity/conversions';
import type { AccessKind } from '../../src/rules/access-kinds';
import type { MortarType } from '../../src/rules/mortars';
import { findMaterial } from '../../src/rules/material-names';
import { readFactors, type FactorsInForce } from '../../src/rules/read-factors';
import type { Residue } from '../../src/rules/residues';
import type { Mask } from '../../src/walls/masks';
import type { WallRow } from '../../src/walls/wall-row';
import { zonesOf, type Zone } from '../../src/walls/zones';

/** A wall row in US units; what is left out is 0, not stated, or of red clay brick. */
export interface MadeRow {
  readonly wall?: string;
  readonly zone?: string;
  readonly level?: number;
  readonly material?: string;
  /** In place of the material's own. */
  readonly ceiling?: 0 | 1 | 2 | 3;
  /** ft2 */
  readonly area: number;
  /** ft */
  readonly height?: number;
  /** ft2 */
  readonly openings?: number;
  /** ft */
  readonly openingPerimeter?: number;
  readonly fixtures?: number;
  readonly mortar?: MortarType | undefined;
  readonly residue?: Residue | undefined;
  readonly brushed?: boolean;
  readonly mask?: Mask;
  readonly access?: AccessKind | undefined;
  /** g on 30 in2 */
  readonly suction?: number;
  readonly receives?: string;
}

/** Factor ids and values in US units. */
export type Lines = readonly (readonly [string, number | string])[];

/** The factors of lines. */
export function factorsOf(lines: Lines = []): FactorsInForce {
  return readFactors(lines.map((line) => [...line]));
}

/** A made row as the core knows it. */
export function wallRow(made: MadeRow, index: number, factors: FactorsInForce): WallRow {
  const known = findMaterial(factors.materials, made.material ?? 'Red clay brick');
  if (known === undefined) throw new Error(`There is no material ${String(made.material)}.`);
  const { mask = 'no', ceiling } = made;
  return {
    row: index + 2,
    wall: made.wall ?? `W${String(index + 1)}`,
    zone: made.zone ?? 'Zone',
    level: made.level ?? 0,
    material: ceiling === undefined ? known : { ...known, ceiling },
    area: toBase(made.area, 'ft2'),
    height: toBase(made.height ?? 0, 'ft'),
    openings: toBase(made.openings ?? 0, 'ft2'),
    openingPerimeter: toBase(made.openingPerimeter ?? 0, 'ft'),
    fixtures: made.fixtures ?? 0,
    mortar: made.mortar,
    residue: made.residue,
    brushed: made.brushed ?? false,
    brushPriced: false,
    brushedStated: made.brushed !== undefined,
    age: 0,
    masked: mask === 'yes' || mask === 'only',
    mask,
    neverMasked: mask === 'never',
    access: made.access,
    suction: toBase(made.suction ?? 0, 'g/30in2'),
    receives: made.receives ?? '',
  };
}

/** The estimate of made rows, by the core alone. */
export function estimateOf(rows: readonly MadeRow[], lines: Lines = [], takeRow?: RowTaker): JobEstimate {
  const factors = factorsOf(lines);
  const zones = zonesOf(rows.map((made, index) => wallRow(made, index, factors)));
  return estimateJob(zones, factors, { takeRow });
}

/** The estimate of a zone that is the whole job. */
export function estimateZone(zone: Zone, factors: FactorsInForce): ZoneEstimate {
  const [estimate] = estimateJob([zone], factors).zones;
  if (estimate === undefined) throw new Error(`${zone.name} has no estimate.`);
  return estimate;
}
