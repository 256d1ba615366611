import { addedQuantities, quantityIds } from '../src/estimate/quantities';
import { explainedByFactors, explainedByJob, explainedByRow, explainedByZone } from '../src/trace/explained';

/** What adds up over rows, by heading and by the name of its worksheet function. */
export const added: Readonly<Record<string, string>> = {
  ...Object.fromEntries(quantityIds.map((id) => [addedQuantities[id].heading.toLowerCase(), id])),
  cleaner: 'concentrate',
};
/** One number of each zone and of the job. */
export const byJob: Readonly<Record<string, string>> = explainedByJob;
/** One number of each zone. */
export const byZone: Readonly<Record<string, string>> = explainedByZone;
/** One number of each washed row. */
export const byRow: Readonly<Record<string, string>> = explainedByRow;
/** One number for all. */
export const byFactors: Readonly<Record<string, string>> = explainedByFactors;

/** Names that TRACE takes. */
export const traceNames: readonly string[] = [
  ...Object.keys(added),
  ...Object.keys(byJob),
  ...Object.keys(byZone),
  ...Object.keys(byRow),
  ...Object.keys(byFactors),
];
