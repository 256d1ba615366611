import { sampleMissing } from '../../hazards/cleaner-on-wall';
import type { StepBuilder, StepId } from '../step';
import { factorFact } from '../step-facts';

/** The step from whose tick the wait before the inspection counts. */
export const SAMPLE_WASH: { readonly after: StepId; readonly title: string } = {
  after: 'sample-wash',
  title: 'Sample washed',
};

/** The day on which the sample was washed, where the workbook does not state one that was inspected. */
export const sampleWash: StepBuilder = ({ zone, factors }) =>
  sampleMissing(zone, factors)
    ? {
        id: SAMPLE_WASH.after,
        title: SAMPLE_WASH.title,
        todo: [
          'Wash the sample as the next step says.',
          'Tick this when the last of it is rinsed: the wait before it is inspected counts from the tick.',
        ],
        facts: [factorFact('Minimum wait before inspection', 'sample.wait', factors)],
        source: 'tn20',
        kind: 'published',
      }
    : undefined;
