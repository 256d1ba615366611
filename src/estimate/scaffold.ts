import type { AccessKind } from '../rules/access-kinds';
import type { FactorsInForce } from '../rules/read-factors';
import type { RowRecord } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';
import { traceHeight, type Elevation } from './elevation';

/** The scaffold in force. */
export interface ScaffoldRules {
  /** Whether it is in this bid. */
  readonly ours: boolean;
  /** How walls are reached that do not say so themselves. */
  readonly usual: AccessKind;
  /** m2 per labor-hour, up to `height` and above */
  readonly low: number;
  readonly high: number;
  /** m */
  readonly height: number;
}

/**
 * The scaffold in force.
 * @param factors the factors in force
 * @returns whose it is, and its rates
 */
export function scaffoldRules(factors: FactorsInForce): ScaffoldRules {
  return {
    ours: factors.choice('scaffold') === 'yes',
    usual: factors.choice('access.kind') as AccessKind,
    low: factors.value('rate.scaffold.low'),
    high: factors.value('rate.scaffold.high'),
    height: factors.value('scaffold.low'),
  };
}

/**
 * Labor-hours of putting up a scaffold before a row and taking it down, where it is in this bid. The published rates
 * are of whole hours on site, breaks among them, so that the working share of an hour does not lengthen them. Source of
 * the rates: CDHU bulletin 202.
 * @param row the wall row
 * @param elevation how its zone stands
 * @param rules the scaffold in force
 * @param rec takes down the lines; `Area#` has been taken down
 * @returns labor-hours
 */
export function scaffoldHours(
  row: WallRow,
  elevation: Elevation,
  rules: ScaffoldRules,
  rec?: RowRecord,
): number {
  if (!rules.ours || (row.access ?? rules.usual) !== 'scaffold') {
    rec?.line('noScaffold', 0);
    return 0;
  }
  const height = elevation.height(row);
  const foot = elevation.foot(row);
  const high = Math.min(1, Math.max(0, (foot + height - rules.height) / height));
  const hours = row.area * ((1 - high) / rules.low + high / rules.high);
  if (rec) {
    traceHeight(row, rec);
    const below = elevation.below(row).map(({ level }) => `levelHeight${String(level)}@`);
    rec.line('foot', foot, { below: below.join(' + ') || '0 * access_ground' });
    rec.line('highScaffold', high);
    rec.line('scaffoldHours', hours);
  }
  return hours;
}
