import { fanWidth } from '../../estimate/nozzle';
import { narrowJet, overPressure } from '../../hazards/jet';
import type { WallRow } from '../../walls/wall-row';
import { nozzleHazardWords } from '../hazard-words';
import { levelsOf } from '../levels';
import { materialsNamed, wallsNamed } from '../named';
import { factorFact, resultFact, rowsFact } from '../step-facts';
import type { StepBuilder, StepSite } from '../step';
import { rowsOf } from '../washes';
import { collectFacts } from './runoff-facts';
import { rinseFacts } from './wash-facts';
import { warmthFacts } from './weather-facts';
import { coldHold } from './weather-hold';

/** From the top down, each wall at a pressure that it takes. */
export const rinse: StepBuilder = (site) => {
  const { zone, factors, first } = site;
  if (first === undefined) return undefined;
  const clear = first.class === 0;
  const limited = overPressure(zone, factors);
  const rows = new Set(rowsOf(first));
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
      ...jetTodo(site, rows, limited),
    ],
    facts: [
      ...rinseFacts(first, limited, factors),
      factorFact('Nozzle number', 'nozzle.number', factors),
      factorFact('Fan', 'nozzle.angle', factors),
      factorFact('Narrowest fan', 'limit.angle', factors),
      factorFact('Distance', 'nozzle.distance', factors),
      factorFact('Minimum distance', 'limit.distance', factors),
      resultFact(
        'Width of the fan on the wall, at most',
        fanWidth(factors.value('nozzle.distance'), factors.value('nozzle.angle')),
        'shortLength',
        'fanWidth',
        factors,
      ),
      factorFact('Water of one rinse', 'rinse.perArea', factors),
      resultFact('Water, whole zone', zone.totals.rinseWater, 'volume', 'rinsePerArea', factors),
      ...collectFacts(zone, factors),
      ...(clear ? warmthFacts(factors) : []),
      ...levelsOf(zone.zone.rows.filter((row) => rows.has(row))).map(({ level, rows: onLevel }) =>
        rowsFact(level === 0 ? 'Level not stated' : `Level ${String(level)}`, wallsNamed(onLevel)),
      ),
      ...(zone.zone.below.length > 0 ? [rowsFact('Then, in other zones', wallsNamed(zone.zone.below))] : []),
    ],
    // A cleaner on the wall is always rinsed; only a wash with clear water can wait for warmer weather.
    hold: clear ? coldHold(zone, factors) : undefined,
    mayOverrule: true,
    source: 'tn20',
    kind: 'published',
  };
};

/**
 * What the jet may not do to these walls, in sentences.
 * @param site the zone and the factors in force
 * @param rows the walls that are rinsed
 * @param overPressure the rows of the zone that take less than the nozzle is set to
 * @returns what to do; none where all is well
 */
export function jetTodo(
  { zone, factors }: Pick<StepSite, 'zone' | 'factors'>,
  rows: ReadonlySet<WallRow>,
  overPressure: readonly WallRow[],
): string[] {
  const narrow = narrowJet(zone, factors);
  const limited = overPressure.filter((row) => rows.has(row));
  return [
    ...(limited.length > 0
      ? [
          `Turn the pressure down before ${materialsNamed(limited)} (${wallsNamed(limited)}): the nozzle is set to more than it takes.`,
        ]
      : []),
    ...(narrow.length === 0
      ? []
      : [
          `Hold the nozzle farther away or use a wider fan: the workbook has set ${nozzleHazardWords(narrow, factors)}, less than the minimum.`,
        ]),
  ];
}
