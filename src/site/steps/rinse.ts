import { fanWidth, rinseFlow } from '../../estimate/nozzle';
import { factorFact, pressureFact, resultFact, rowsFact } from '../step-facts';
import type { StepBuilder } from '../step';
import { narrowJet, overPressure, takesLeastPressure } from '../../hazards/jet';
import { nozzleHazardWords } from '../hazard-words';
import { levelsOf } from '../levels';
import { wallsNamed } from '../named';
import { collectFacts } from './runoff-facts';
import { warmthFacts } from './weather-facts';
import { coldHold } from './weather-hold';

/** From the top down, at a pressure that every washed wall takes. */
export const rinse: StepBuilder = ({ zone, factors }) => {
  const { rows } = zone.zone;
  const weakest = takesLeastPressure(rows);
  if (weakest === undefined) return undefined;
  const limited = overPressure(zone, factors) !== undefined;
  const narrow = narrowJet(zone, factors);
  const levels = levelsOf(rows.filter(({ masked }) => !masked));
  const clear = zone.governing?.classToUse === 0;
  return {
    id: 'rinse',
    title: clear ? 'Wash with clear water, top to bottom' : 'Rinse, top to bottom',
    todo: [
      'Work from the top down, so that nothing runs over what is already clean.',
      ...(clear
        ? []
        : [
            'Rinse in the order of applying, until the water runs clear.',
            'Whatever the weather, cleaner that is on the wall is rinsed off.',
            'Where film comes off glass with the final rinse, take it off now, and rinse at once what got under it.',
          ]),
      ...(limited ? [`Turn the pressure down: the workbook has set more than ${weakest.name} takes.`] : []),
      ...(narrow.length === 0
        ? []
        : [
            `Hold the nozzle farther off or use a wider fan: the workbook has set ${nozzleHazardWords(narrow, factors)}, less than the least.`,
          ]),
    ],
    facts: [
      limited
        ? pressureFact('Pressure, at most', weakest, factors)
        : factorFact('Pressure', 'nozzle.pressure', factors),
      ...(limited ? [] : [pressureFact('Least that a washed wall takes', weakest, factors)]),
      factorFact('Nozzle number', 'nozzle.number', factors),
      factorFact('Fan', 'nozzle.angle', factors),
      factorFact('Narrowest fan', 'limit.angle', factors),
      factorFact('Distance', 'nozzle.distance', factors),
      factorFact('Least distance', 'limit.distance', factors),
      resultFact(
        'Width of the fan on the wall, at most',
        fanWidth(factors.value('nozzle.distance'), factors.value('nozzle.angle')),
        'shortLength',
        'fanWidth',
        factors,
      ),
      resultFact('Flow', rinseFlow(factors), 'flow', 'nozzleFlow', factors),
      factorFact('Rinses', 'rinse.count', factors),
      resultFact('Water, whole zone', zone.totals.rinseWater, 'volume', 'rinseWater', factors),
      ...collectFacts(zone, factors),
      ...(clear ? warmthFacts(factors) : []),
      ...levels.map(({ level, rows: onLevel }) =>
        rowsFact(level === 0 ? 'Level not stated' : `Level ${String(level)}`, wallsNamed(onLevel)),
      ),
      ...(zone.zone.below.length > 0 ? [rowsFact('Then, in other zones', wallsNamed(zone.zone.below))] : []),
    ],
    // A cleaner on the wall is always rinsed; only a wash with clear water can wait for warmer weather.
    hold: clear ? coldHold(zone, factors) : undefined,
    source: 'tn20',
    kind: 'published',
  };
};
