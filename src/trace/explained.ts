/** The numbers that a zone has and the job has too, by the name that a user asks for. */
export const explainedByJob = { governing: 'ceiling', 'bid price': 'bidPrice' } as const;

/** The numbers that each zone has of its own, by the name that a user asks for. */
export const explainedByZone = { class: 'class' } as const;

/** The numbers that each washed row has of its own, by the name that a user asks for. */
export const explainedByRow = {
  'pre-wet minutes': 'prewetTime',
  'pre-wet passes': 'prewetPasses',
  passes: 'washPasses',
  patch: 'patch',
  wait: 'wait',
  pressure: 'pressure',
  flow: 'flow',
  'reaction force': 'reactionForce',
  'left to the brush': 'left',
} as const;

/** The numbers that are the same for every zone, by the name that a user asks for. */
export const explainedByFactors = {
  'time to dry': 'timeToDry',
  mistings: 'mistings',
  'fan width': 'fanWidth',
  'days of the job': 'jobDays',
  'rental days of the job': 'jobHireDays',
} as const;
