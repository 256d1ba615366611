import { constants } from '../rules/constants';
import type { Recorder, RowRecord } from '../trace/recorder';

/**
 * Flow of a nozzle: number * sqrt(pressure / 4000 psi) US gal/min. Source: nozzle numbering convention.
 * @param number the nozzle's number
 * @param pressure pressure at the nozzle, kPa
 * @param rec takes down the line; `pressure#` has been taken down
 * @returns flow in L/min
 */
export function nozzleFlow(number: number, pressure: number, rec?: RowRecord): number {
  const flow = number * constants.ratedFlow.value * Math.sqrt(pressure / constants.ratedPressure.value);
  rec?.line('nozzleFlow', flow);
  return flow;
}

/**
 * Width of a fan: 2 * distance * tan(angle / 2). Real fans are narrower.
 * @param distance distance of the nozzle from the face, m
 * @param angle fan angle, degrees
 * @param rec takes down the line, over those of distance and angle
 * @returns width in m
 */
export function fanWidth(distance: number, angle: number, rec?: Recorder): number {
  const width = 2 * distance * Math.tan(angle / 2 / constants.radian.value);
  // The width is shown in the unit of the distance.
  rec?.line('fanWidth', width);
  return width;
}

/**
 * Force with which a jet pushes back: 0.0526 Q sqrt(P) lbf, with Q in US gal/min and P in psi.
 * @param flow L/min
 * @param pressure kPa
 * @param rec takes down the line; `flow#` and `pressure#` have been taken down
 * @returns force in N
 */
export function reactionForce(flow: number, pressure: number, rec?: RowRecord): number {
  const force = constants.jetCoefficient.value * flow * Math.sqrt(pressure);
  rec?.line('reactionForce', force);
  return force;
}
