import { isWashed } from '../../hazards/washed';
import type { Check } from '../finding';

/** A team of one. */
export const teamOfOne: Check = ({ zones, factors }) =>
  factors.value('team.size') > 1 || !zones.some(isWashed)
    ? []
    : [
        {
          check: 'team of one',
          what: 'A team is one person',
          where: 'factor team.size',
          why: 'Nobody tends the hose, pre-wets, mists or keeps wet what lies below while that person washes',
          todo: 'Plan two or more to a team',
          source: 'practice',
        },
      ];

/** A scaffold that is in the bid though no wall is reached by it. */
export const scaffoldUnused: Check = ({ job, factors }) => {
  const usual = factors.choice('access.kind');
  const used = job.some(({ zone }) => zone.rows.some(({ access }) => (access ?? usual) === 'scaffold'));
  return factors.choice('scaffold') !== 'yes' || used
    ? []
    : [
        {
          check: 'scaffold',
          what: 'The scaffold is in this bid, but no wall is reached by scaffold',
          where: 'factor scaffold',
          why: 'Its hours come from the walls that are reached by it: there are none',
          todo: 'State scaffold in the column Access or by the factor access.kind, or set scaffold to no',
          source: 'rows',
        },
      ];
};
