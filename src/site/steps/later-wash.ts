import { acidOnCalcareous } from '../../hazards/cleaner-on-wall';
import { overPressure } from '../../hazards/jet';
import { className, type CleanerClass } from '../../rules/cleaner-classes';
import { materialsNamed, wallsNamed } from '../named';
import { rowsFact } from '../step-facts';
import type { StepBuilder } from '../step';
import { rowsOf } from '../washes';
import { applyCautions } from './apply';
import { mistTodo } from './dwell';
import { mixTodo } from './mix';
import { jetTodo } from './rinse';
import { applyFacts, dwellFacts, mixFacts, preWetFacts, rinseFacts, scrubFacts } from './wash-facts';
import { warmthFacts } from './weather-facts';
import { applyHold, coldHold } from './weather-hold';

/**
 * Masked masonry is washed after the rest of its zone, at its own class.
 * @param own the class of the wash
 * @returns builds the step
 */
export function laterWash(own: CleanerClass): StepBuilder {
  return (site) => {
    const { zone, factors, later } = site;
    const wash = later.find((each) => each.class === own);
    if (wash === undefined) return undefined;
    const rows = rowsOf(wash);
    const among = new Set(rows);
    const clear = wash.class === 0;
    const covered = zone.zone.rows.filter(({ masked, material }) => masked && material.ceiling < wash.class);
    const limited = overPressure(zone, factors);
    return {
      id: `later-${String(own) as '0' | '1' | '2' | '3'}`,
      title: `Afterwards: ${materialsNamed(rows)}, class ${String(wash.class)}, ${className(wash.class)}`,
      todo: [
        `Uncover ${wallsNamed(rows)} once the walls washed before are rinsed. The clean walls are bare now: wet them before this wash runs over them.`,
        ...(covered.length > 0
          ? [`Leave covered: ${materialsNamed(covered)} (${wallsNamed(covered)}).`]
          : []),
        ...(clear
          ? ['Scrub with a soft brush that is not metal, and rinse with clear water, from the top down.']
          : [
              ...mixTodo(
                wash.class,
                acidOnCalcareous(zone).filter((row) => among.has(row)),
              ),
              'Pre-wet, then apply, scrub and rinse patch after patch, by the dwell clock and from the top down.',
              ...mistTodo(site),
              ...applyCautions(site),
            ]),
        ...jetTodo(site, among, limited),
      ],
      facts: [
        rowsFact('Walls', wallsNamed(rows)),
        ...preWetFacts(wash, factors),
        ...mixFacts(wash, factors),
        ...applyFacts(wash, factors),
        ...scrubFacts(wash, factors),
        ...dwellFacts(wash, factors),
        ...rinseFacts(wash, limited, factors),
        ...warmthFacts(factors),
      ],
      hold: wash.finding ?? (clear ? coldHold(zone, factors) : applyHold(zone, factors)),
      mayOverrule: wash.finding === undefined,
      source: 'practice',
      kind: 'common practice',
    };
  };
}
