/** The numbers of a zone or of the job that are not sums of rows, by the name that a user asks for. */
export const explainedByZone = {
  class: 'class',
  governing: 'ceiling',
  'pre-wet minutes': 'prewetTime',
  passes: 'passes',
  patches: 'patches',
} as const;

/** The numbers that are the same for every zone, by the name that a user asks for. */
export const explainedByFactors = {
  patch: 'patch',
  wait: 'wait',
  'time to dry': 'timeToDry',
  flow: 'flow',
} as const;
