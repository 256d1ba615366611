import { mortarTypes, DEFAULT_MORTAR, type MortarType } from '../rules/mortars';
import type { FactorsInForce } from '../rules/read-factors';
import type { RowRecord } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';

/** What each mortar asks of the one who scrapes and scrubs; 1 for Type N. */
export type Efforts = Readonly<Record<MortarType, number>>;

/**
 * The efforts in force: (28-day strength / that of Type N)^x. Strengths from ASTM C270, x an assumption.
 * @param factors the factors in force
 * @returns the effort of each mortar, a ratio
 */
export function effortsOf(factors: FactorsInForce): Efforts {
  const typeN = factors.value('mortar.N.strength');
  const power = factors.value('mortar.effortExponent');
  const effort = (type: MortarType) => (factors.value(`mortar.${type}.strength`) / typeN) ** power;
  return Object.fromEntries(mortarTypes.map((type) => [type, effort(type)])) as Record<MortarType, number>;
}

/**
 * The effort of a row's mortar.
 * @param row the wall row
 * @param efforts the efforts in force
 * @param rec takes down the line
 * @returns a ratio to Type N
 */
export function effortOf(row: WallRow, efforts: Efforts, rec?: RowRecord): number {
  const type = row.mortar ?? DEFAULT_MORTAR;
  rec?.line(row.mortar ? 'mortarEffort' : 'mortarDefault', efforts[type], { type });
  return efforts[type];
}
