/** The numbers that a zone has and the job has too, by the name that a user asks for. */
export const explainedByJob = { governing: 'ceiling', 'bid price': 'bidPrice' } as const;

/** The numbers that each zone has of its own, by the name that a user asks for. */
export const explainedByZone = {
  class: 'class',
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
  'fan width': 'fanWidth',
  'reaction force': 'reactionForce',
} as const;
