import type { MaterialInForce } from '../../rules/read-factors';
import type { Check, Finding } from '../finding';
import { shownFactor, shownValue } from '../shown';

/** Pressure, distance and angle of the rinse nozzle against the most sensitive washed face of each zone. */
export const nozzleLimits: Check = ({ zones, factors }) => {
  const findings: Finding[] = [];
  for (const { zone } of zones) {
    const weakest = mostSensitive(zone.rows.filter(({ masked }) => !masked).map(({ material }) => material));
    if (weakest === undefined) continue;
    if (factors.value('nozzle.pressure') > weakest.pressure) {
      findings.push({
        check: 'nozzle pressure',
        what: `Rinsing at ${shownFactor(factors, 'nozzle.pressure')}, ${weakest.name} takes ${shownValue(weakest.pressure, 'pressure', factors)}`,
        where: zone.name,
        why: 'Pressure strips faces, coatings and joints',
        todo: 'Lower the factor nozzle.pressure for this zone, or mask the material',
        source: 'gsa-0451004s',
      });
    }
  }
  if (factors.value('nozzle.distance') < factors.value('limit.distance')) {
    findings.push({
      check: 'nozzle distance',
      what: `Nozzle at ${shownFactor(factors, 'nozzle.distance')}, the least is ${shownFactor(factors, 'limit.distance')}`,
      where: 'factor nozzle.distance',
      why: 'A short distance harms joints and sensitive faces',
      todo: 'Keep further off',
      source: 'stone-producer',
    });
  }
  if (factors.value('nozzle.angle') < factors.value('limit.angle')) {
    findings.push({
      check: 'nozzle angle',
      what: `Fan of ${shownFactor(factors, 'nozzle.angle')}, the narrowest is ${shownFactor(factors, 'limit.angle')}`,
      where: 'factor nozzle.angle',
      why: 'A narrow tip harms joints and sensitive faces',
      todo: 'Use a wider fan',
      source: 'memory',
    });
  }
  return findings;
};

function mostSensitive(materials: readonly MaterialInForce[]): MaterialInForce | undefined {
  return materials.reduce<MaterialInForce | undefined>(
    (weakest, material) =>
      weakest === undefined || material.pressure < weakest.pressure ? material : weakest,
    undefined,
  );
}
