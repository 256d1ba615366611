import { symbolOf } from '../govern/govern-zone';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder, RowRecord } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';
import { fanWidth, nozzleFlow, reactionForce } from './nozzle';

/** The rinse in force. */
export interface RinseRules {
  readonly nozzle: number;
  /** kPa */
  readonly pressure: number;
  /** L/m2 in one pass */
  readonly perArea: number;
}

/**
 * The rinse in force.
 * @param factors the factors in force
 * @param rec takes down the width of the fan
 * @returns nozzle, pressure and water on an area
 */
export function rinseRules(factors: FactorsInForce, rec?: Recorder): RinseRules {
  if (rec) fanWidth(factors.value('nozzle.distance'), factors.value('nozzle.angle'), rec);
  return {
    nozzle: factors.value('nozzle.number'),
    pressure: factors.value('nozzle.pressure'),
    perArea: factors.value('rinse.perArea'),
  };
}

/**
 * Pressure at which a row is rinsed: the lesser of the nozzle's and its material's limit, both at the gauge.
 * @param row the wall row
 * @param rules the rinse in force
 * @param rec takes down the lines
 * @returns kPa
 */
export function rinsePressure(row: WallRow, rules: RinseRules, rec?: RowRecord): number {
  const pressure = Math.min(rules.pressure, row.material.pressure);
  if (rec) {
    const limit = `pressure_${symbolOf(row.material)}`;
    rec.material(limit, row.material, 'pressure', 'pressure');
    rec.line('rinsePressure', pressure, { limit });
  }
  return pressure;
}

/**
 * Time of a lance to rinse an area once: the water that it needs by the flow at the row's pressure.
 * @param row the wall row
 * @param rules the rinse in force
 * @param rec takes down the lines
 * @returns min/m2; infinite where the material takes no pressure at all
 */
export function rinseTime(row: WallRow, rules: RinseRules, rec?: RowRecord): number {
  const pressure = rinsePressure(row, rules, rec);
  const flow = nozzleFlow(rules.nozzle, pressure, rec);
  const time = rules.perArea / flow;
  if (rec) {
    reactionForce(flow, pressure, rec);
    rec.line('rinseTime', time);
  }
  return time;
}
