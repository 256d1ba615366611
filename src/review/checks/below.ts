import { weakerBelow } from '../../hazards/below';
import { washesOf } from '../../hazards/washed';
import { type Check, type Finding, materialNames, whereOf } from '../finding';

/** What lies below is wetted too: walls that may not meet the cleaner used above them. */
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
          what: `${materialNames(rows)} lies lower than walls washed with class ${[...new Set(used)].join(' and ')} in ${above.zone.name}`,
          where: whereOf(zone.name, rows),
          why: 'Rinse water carries the cleaner down over what lies below, and under masking that is not sealed',
          todo:
            zone.name === above.zone.name
              ? 'Seal the upper edge of the masking and keep what lies below wet until the final rinse'
              : 'If the walls stand above one another, put them in one zone or mask what lies below; keep it wet until the final rinse',
          source: 'tn20',
        },
      ];
    });
  });
