import { weakerBelow } from '../../hazards/below';
import { washesOf } from '../../hazards/washed';
import { classInWords } from '../../rules/cleaner-classes';
import { type Check, type Finding, materialNames, placed } from '../finding';

/** What lies below in the zone, or receives its rinse, is wetted too: walls that may not meet the cleaner used above them. */
export const whatLiesBelow: Check = ({ zones }) =>
  zones.flatMap((above): Finding[] => {
    const weaker = weakerBelow(above, zones);
    return zones.flatMap(({ zone }) => {
      const rows = weaker.filter((row) => row.zone === zone.name);
      if (rows.length === 0) return [];
      const takes = Math.min(...rows.map(({ material }) => material.ceiling));
      const used = washesOf(above).flatMap((wash) => (wash.class > takes ? [wash.class] : []));
      return [
        {
          check: 'what lies below',
          what: `${materialNames(rows)} ${zone.name === above.zone.name ? 'lies lower than' : 'receives the rinse of'} walls washed with ${[...new Set(used)].map(classInWords).join(' and ')} in ${above.zone.name}`,
          ...placed(zone.name, rows),
          column: 'material',
          why: 'Rinse water carries the cleaner down over what lies below, and under masking that is not sealed',
          todo:
            zone.name === above.zone.name
              ? 'Seal the upper edge of the masking and keep what lies below wet until the final rinse'
              : 'Mask what receives the rinse, seal its upper edge, and keep it wet until the final rinse',
          source: 'tn20',
        },
      ];
    });
  });
