import { weakerBelow, weakerMasked } from '../../hazards/below';
import { unmaskedGlassOrMetal } from '../../hazards/cleaner-on-wall';
import { outOfScope } from '../../hazards/washed';
import { materialsNamed, wallsNamed } from '../named';
import { resultFact, rowsFact } from '../step-facts';
import type { StepBuilder } from '../step';
import { rowsOf } from '../washes';
import { alkaliFacts, collectFacts } from './runoff-facts';

/** What is not washed is covered before water comes near. */
export const protection: StepBuilder = ({ zone, zones, factors, later }) => {
  const { rows } = zone.zone;
  const { totals } = zone;
  const covered = rows.filter((row) => row.masked);
  const open = rows.filter((row) => !row.masked && row.openings > 0);
  const out = outOfScope(zone);
  const fixtures = rows.reduce((sum, row) => sum + (row.masked ? 0 : row.fixtures), 0);
  const weaker = weakerMasked(zone);
  const below = weakerBelow(zone, zones).filter((row) => row.zone !== zone.zone.name);
  const unmasked = unmaskedGlassOrMetal(zone);
  return {
    id: 'protection',
    title: 'Protection up',
    todo: [
      'Cover what is not washed; tape every edge, the upper one first.',
      ...(fixtures > 0
        ? [
            'Have electrical openings and fittings de-energized and locked out by a licensed person, then cover them.',
          ]
        : []),
      ...(weaker.length > 0
        ? [
            `Seal with special care: this cleaner must not touch ${materialsNamed(weaker)} (${wallsNamed(weaker)}).`,
          ]
        : []),
      ...(below.length > 0
        ? [`Protect what stands below in other zones: ${materialsNamed(below)} (${wallsNamed(below)}).`]
        : []),
      ...(unmasked.length > 0
        ? [`Not masked, so it is washed too: ${materialsNamed(unmasked)} (${wallsNamed(unmasked)}).`]
        : []),
      'Cover landscaping, vehicles and entrances below; barricade the area; set up to collect the runoff.',
    ],
    facts: [
      ...(covered.length > 0 ? [rowsFact('Masked walls', wallsNamed(covered))] : []),
      ...(later.length > 0
        ? [rowsFact('Of these, washed afterwards', wallsNamed(later.flatMap(rowsOf)))]
        : []),
      ...(out.length > 0 ? [rowsFact('Of these, out of scope', wallsNamed(out))] : []),
      ...(open.length > 0 ? [rowsFact('Walls with openings', wallsNamed(open))] : []),
      ...(fixtures > 0 ? [rowsFact('Fixtures', String(fixtures))] : []),
      ...(totals.maskingArea === 0
        ? []
        : [
            resultFact('Masking', totals.maskingArea, 'area', 'masking', factors),
            resultFact('Film', totals.film, 'area', 'film', factors),
            resultFact('Tape', totals.tape, 'length', 'tape', factors),
            resultFact('Time', totals.maskHours, 'laborHours', 'maskOn', factors),
          ]),
      ...collectFacts(zone, factors),
      ...alkaliFacts(zone, factors),
    ],
    decidedOn: rows.map(({ wall, masked }) => (masked ? `${wall} masked` : wall)),
    source: 'practice',
    kind: 'common practice',
  };
};
