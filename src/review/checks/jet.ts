import { appliedUnderPressure, narrowJet, overPressure } from '../../hazards/jet';
import { type Check, hazardCheck } from '../finding';
import { shownFactor, shownValue } from '../shown';

/** Pressure of the nozzle against the washed materials of each zone. */
export const tooMuchPressure = hazardCheck(overPressure, (_, rows, { factors }) => {
  const materials = [...new Map(rows.map(({ material }) => [material.code, material])).values()];
  const takes = materials.map(
    ({ name, pressure }) => `${name} takes ${shownValue(pressure, 'pressure', factors)}`,
  );
  return {
    check: 'nozzle pressure',
    what: `Nozzle at ${shownFactor(factors, 'nozzle.pressure')}, ${takes.join(', ')}`,
    why: 'Pressure strips faces, coatings and joints; these walls are priced at what they take, which is slower',
    todo: 'Turn the pressure down before these walls, or mask them',
    source: 'practice',
    column: 'material',
  };
});

/** Standoff and fan of the rinse nozzle, once for the job. */
export const tooNarrowJet: Check = ({ zones, factors }) => {
  const found = zones.map((zone) => narrowJet(zone, factors)).find((settings) => settings.length > 0) ?? [];
  return found.map(({ setting, limit }) => {
    const [set, least] = [shownFactor(factors, setting), shownFactor(factors, limit)];
    return setting === 'nozzle.distance'
      ? {
          check: 'nozzle distance',
          what: `Nozzle at ${set}, the least is ${least}`,
          where: `factor ${setting}`,
          why: `Closer than ${least} a jet cuts joints and faces`,
          todo: 'Hold it farther away',
          source: 'practice',
        }
      : {
          check: 'nozzle angle',
          what: `Fan of ${set}, the narrowest is ${least}`,
          where: `factor ${setting}`,
          why: `Narrower than ${least} a fan cuts joints and faces`,
          todo: 'Use a wider fan',
          source: 'practice',
        };
  });
};

/** Pressure that cleaner is put on with, once for the job. */
export const tooMuchToApply: Check = ({ zones, factors }) => {
  const most = zones
    .map((zone) => appliedUnderPressure(zone, factors))
    .find((pressure) => pressure !== undefined);
  return most === undefined
    ? []
    : [
        {
          check: 'apply pressure',
          what: `Cleaner put on at ${shownFactor(factors, 'apply.pressure')}, the most is ${shownValue(most, 'pressure', factors)}`,
          where: 'factor apply.pressure',
          why: 'More drives cleaner into the wall, where rinsing does not reach it',
          todo: 'Use a brush, or a sprayer at less pressure',
          source: 'pressure-cleaning',
        },
      ];
};
