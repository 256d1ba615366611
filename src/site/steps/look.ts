import { isWashed, washedRows } from '../../hazards/washed';
import type { StepBuilder } from '../step';

/** What a wet wall hides shows when it is dry. */
export const look: StepBuilder = ({ zone }) =>
  !isWashed(zone)
    ? undefined
    : {
        id: 'look',
        title: 'Inspect when dry',
        todo: [
          'Look at the wall when it is dry, beside the accepted sample.',
          'Look for residue left, streaks, stain, bleached or opened joints, and harm to glass and metal.',
          'Put what you see on the punch list, and repeat only what a new sample shows to be safe.',
          'Tick this step when every item of the punch list is closed.',
        ],
        facts: [],
        decidedOn: washedRows(zone).map(({ wall }) => wall),
        ofPunchList: true,
        mayOverrule: true,
        source: 'tn20',
        kind: 'published',
      };
