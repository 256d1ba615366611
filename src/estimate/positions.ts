import { hoursOf, type Crew } from './crew';
import type { FactorsInForce } from '../rules/read-factors';
import type { RowRecord } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';
import { traceHeight, type Elevation } from './elevation';

/** How a team goes along and up a wall. Metres and minutes of a team. */
export interface AccessRules {
  readonly dropWidth: number;
  readonly lift: number;
  /** Height that is reached from the ground. */
  readonly ground: number;
  readonly move: number;
  readonly groundMove: number;
}

/**
 * The rules in force.
 * @param factors the factors in force
 * @returns widths, heights and times
 */
export function accessRules(factors: FactorsInForce): AccessRules {
  return {
    dropWidth: factors.value('access.dropWidth'),
    lift: factors.value('access.lift'),
    ground: factors.value('access.ground'),
    move: factors.value('access.move'),
    groundMove: factors.value('access.groundMove'),
  };
}

/**
 * Labor-hours of moving from position to position of a row: a position is a drop wide and a lift high, and takes longer
 * for the share of the row that no one reaches from the ground. An assumption.
 * @param row the wall row
 * @param area bare net area that is washed, m2
 * @param elevation how its zone stands
 * @param rules the rules in force
 * @param crew the crew in force
 * @param rec takes down the lines; `bareArea#` has been taken down
 * @returns labor-hours
 */
export function moveHours(
  row: WallRow,
  area: number,
  elevation: Elevation,
  rules: AccessRules,
  crew: Crew,
  rec?: RowRecord,
): number {
  const positions = area / (rules.dropWidth * rules.lift);
  const height = elevation.height(row);
  const foot = elevation.foot(row);
  const above = Math.min(1, Math.max(0, (foot + height - rules.ground) / height));
  const minutes = positions * (rules.groundMove + (rules.move - rules.groundMove) * above);
  const hours = hoursOf(minutes * crew.size, crew);
  if (rec) {
    traceHeight(row, rec);
    const below = elevation.below(row).map(({ level }) => `levelHeight${String(level)}@`);
    rec.line('positions', positions);
    rec.line('foot', foot, { below: below.join(' + ') || '0 * access_ground' });
    rec.line('aboveGround', above);
    rec.line('moveHours', hours);
  }
  return hours;
}
