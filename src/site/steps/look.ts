import { isWashed } from '../../hazards/washed';
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
          'Write down what you see, and repeat only what a new sample shows to be safe.',
        ],
        facts: [],
        source: 'tn20',
        kind: 'published',
      };
