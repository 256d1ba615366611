import { litresPerMinute, metres, type LitresPerMinute, type Metres } from '../quantity/quantities';
import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';

/**
 * Flow of a nozzle: number * sqrt(pressure / 4000 psi) US gal/min. Source: nozzle numbering convention.
 * @param number the nozzle's number
 * @param pressure pressure at the nozzle, kPa
 * @returns flow in L/min
 */
export function nozzleFlow(number: number, pressure: number): LitresPerMinute {
  return litresPerMinute(
    number * constants.ratedFlow.value * Math.sqrt(pressure / constants.ratedPressure.value),
  );
}

/**
 * Width of a fan: 2 * distance * tan(angle / 2). Real fans are narrower.
 * @param distance distance of the nozzle from the face, m
 * @param angle fan angle, degrees
 * @returns width in m
 */
export function fanWidth(distance: number, angle: number): Metres {
  const halfAngle = ((angle / 2) * Math.PI) / 180;
  return metres(2 * distance * Math.tan(halfAngle));
}

/**
 * Force with which a jet pushes back: 0.0526 Q sqrt(P) lbf, with Q in US gal/min and P in psi.
 * @param flow L/min
 * @param pressure kPa
 * @returns force in N
 */
export function reactionForce(flow: LitresPerMinute, pressure: number): number {
  return constants.jetCoefficient.value * flow * Math.sqrt(pressure);
}

/**
 * Flow of the rinse nozzle in force.
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns flow in L/min
 */
export function rinseFlow(factors: FactorsInForce, rec?: Recorder): LitresPerMinute {
  const flow = nozzleFlow(factors.value('nozzle.number'), factors.value('nozzle.pressure'));
  if (rec) {
    rec.factor('nozzleNumber', 'nozzle.number');
    rec.factor('nozzlePressure', 'nozzle.pressure');
    rec.constant('ratedFlow');
    rec.constant('ratedPressure');
    rec.line(
      'flow',
      'nozzleNumber * ratedFlow * sqrt(nozzlePressure / ratedPressure)',
      flow,
      'flow',
      'nozzleFlow',
    );
  }
  return flow;
}
