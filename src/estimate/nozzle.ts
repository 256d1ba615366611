import { litresPerMinute, metres, type LitresPerMinute, type Metres } from '../quantity/quantities';
import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';

/**
 * Flow of a nozzle: number * sqrt(pressure / 4000 psi) US gal/min. Source: nozzle numbering convention.
 * @param number the nozzle's number
 * @param pressure pressure at the nozzle, kPa
 * @param rec takes down the line, over those of number and pressure
 * @returns flow in L/min
 */
export function nozzleFlow(number: number, pressure: number, rec?: Recorder): LitresPerMinute {
  const flow = number * constants.ratedFlow.value * Math.sqrt(pressure / constants.ratedPressure.value);
  rec?.line(
    'flow',
    'nozzle_number * ratedFlow * sqrt(nozzle_pressure / ratedPressure)',
    flow,
    'flow',
    'nozzleFlow',
  );
  return litresPerMinute(flow);
}

/**
 * Width of a fan: 2 * distance * tan(angle / 2). Real fans are narrower.
 * @param distance distance of the nozzle from the face, m
 * @param angle fan angle, degrees
 * @param rec takes down the line, over those of distance and angle
 * @returns width in m
 */
export function fanWidth(distance: number, angle: number, rec?: Recorder): Metres {
  const width = 2 * distance * Math.tan(angle / 2 / constants.radian.value);
  // The width is shown in the unit of the distance.
  rec?.line(
    'fanWidth',
    '2 * nozzle_distance_given * tan(nozzle_angle / 2 / radian)',
    width,
    'shortLength',
    'fanWidth',
  );
  return metres(width);
}

/**
 * Force with which a jet pushes back: 0.0526 Q sqrt(P) lbf, with Q in US gal/min and P in psi.
 * @param flow L/min
 * @param pressure kPa
 * @param rec takes down the line, over those of flow and pressure
 * @returns force in N
 */
export function reactionForce(flow: LitresPerMinute, pressure: number, rec?: Recorder): number {
  const force = constants.jetCoefficient.value * flow * Math.sqrt(pressure);
  rec?.line(
    'reactionForce',
    'jetCoefficient * flow * sqrt(nozzle_pressure)',
    force,
    'force',
    'reactionForce',
  );
  return force;
}

/**
 * Flow of the rinse nozzle in force; a record also takes down the width of its fan and its reaction force.
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns flow in L/min
 */
export function rinseFlow(factors: FactorsInForce, rec?: Recorder): LitresPerMinute {
  const pressure = factors.value('nozzle.pressure');
  const flow = nozzleFlow(factors.value('nozzle.number'), pressure, rec);
  if (rec) {
    fanWidth(factors.value('nozzle.distance'), factors.value('nozzle.angle'), rec);
    reactionForce(flow, pressure, rec);
  }
  return flow;
}
