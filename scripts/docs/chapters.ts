import { constants, type ConstantId } from '../../src/rules/constants';
import { factors, type FactorId } from '../../src/rules/factors';
import { methods, type MethodId } from '../../src/rules/methods';

/** A chapter of the page of numbers. */
export interface Chapter {
  readonly title: string;
  readonly words: string;
  readonly methods: readonly MethodId[];
  readonly factors: readonly FactorId[];
  readonly constants: readonly ConstantId[];
}

interface Plan {
  readonly title: string;
  readonly words: string;
  readonly methods: readonly MethodId[];
  /** How the ids of its factors start. */
  readonly factors: readonly string[];
  readonly constants: readonly ConstantId[];
}

const GOVERNING: Plan = {
  title: 'Governing class',
  words:
    'What cannot be kept apart is washed with one cleaner, and the weakest unmasked material of a zone sets how strong it may be. What the residue would need beyond that is made up by scrubbing. Residue that is not stated is foretold: light where the work was brushed down each day, otherwise moderate.',
  methods: [
    'needClass',
    'needClassForetold',
    'mostNeed',
    'ceiling',
    'jobCeiling',
    'classToUse',
    'chosenClass',
    'shortfall',
  ],
  factors: ['need.'],
  constants: ['strongestClass'],
};

const PLANS: readonly Plan[] = [
  {
    title: 'Pre-wet',
    words:
      'A porous face takes water up with the square root of time. It is wet enough when what it would still take up during the dwell is no more than the residual uptake.',
    methods: [
      'sorptivity',
      'governingSuction',
      'residual',
      'prewetTime',
      'passes',
      'prewetContact',
      'noPrewet',
      'absorbed',
      'prewetWater',
    ],
    factors: ['prewet.', 'water.'],
    constants: ['iraTime'],
  },
  {
    title: 'Patch',
    words:
      'The largest area that can be washed in one go: its first and its last point both stay within the dwell, and the cleaner does not dry. Patches of a zone are counted whole.',
    methods: ['evaporation', 'timeToDry', 'longestContact', 'patch', 'wait', 'noPatch', 'patches'],
    factors: ['dwell.', 'rate.apply', 'rate.rinse', 'weather.'],
    constants: ['evaporationCoefficient', 'evaporationOffset', 'evaporationPower', 'windOffset', 'guard'],
  },
  {
    title: 'Water and cleaner',
    words: 'Water is for the pre-wet, in the mix and for the rinse.',
    methods: [
      'washedArea',
      'nozzleFlow',
      'fanWidth',
      'reactionForce',
      'rinsePerArea',
      'rinseWater',
      'cleanerMix',
      'dilution',
      'concentrate',
      'mixWater',
      'noCleaner',
      'water',
    ],
    factors: ['nozzle.', 'rinse.', 'cleaner.'],
    constants: ['ratedFlow', 'ratedPressure', 'radian', 'jetCoefficient'],
  },
  {
    title: 'Masking',
    words: 'Openings, fixtures and masked rows are covered, with a lap along each perimeter.',
    methods: [
      'masked',
      'lapArea',
      'edgeFromHeight',
      'edgeFromArea',
      'fixtureArea',
      'masking',
      'film',
      'tape',
    ],
    factors: ['mask.', 'fixture.film', 'tape.', 'film.'],
    constants: [],
  },
  {
    title: 'Crew-hours',
    words: 'One person for one hour is one crew-hour.',
    methods: [
      'mortarEffort',
      'mortarDefault',
      'scrape',
      'maskOn',
      'prewetHours',
      'applyHours',
      'scrub',
      'rinseHours',
      'clearRinseHours',
      'maskOff',
      'levelLength',
      'zoneLength',
      'moves',
      'moveHours',
      'otherHours',
      'days',
      'setupHours',
      'crewHours',
    ],
    factors: ['crew', 'shift', 'setup.', 'rate.', 'mortar.', 'fixture.', 'access.'],
    constants: ['minPerHour', 'onePerson'],
  },
  {
    title: 'Price',
    words:
      'Every price starts at 0, in whatever money yours are in. Contingency, overhead and profit are added in that order, each on all before it; the price is rounded once, at the end.',
    methods: [
      'priceLabour',
      'priceCleaner',
      'priceMasking',
      'priceWater',
      'priceEquipment',
      'priceAccess',
      'priceNeutralizer',
      'priceDisposal',
      'priceDirect',
      'priceContingency',
      'priceOverhead',
      'priceProfit',
      'price',
      'bidPrice',
    ],
    factors: ['price.'],
    constants: [],
  },
  {
    title: 'Runoff and neutralizer',
    words: 'The acid is reckoned as if it were all hydrochloric and none of it were used up on the wall.',
    methods: ['runoff', 'acid', 'alkali', 'noAcid'],
    factors: ['runoff.', 'acid.', 'neutralizer.'],
    constants: ['molarMassHCl', 'molarMassNaHCO3', 'molarMassNa2CO3', 'acidPerNaHCO3', 'acidPerNa2CO3'],
  },
  {
    title: 'What the checks hold against',
    words: 'These enter no quantity; `WASH.CHECKS` and the steps compare with them.',
    methods: [],
    factors: ['sample.', 'limit.', 'apply.'],
    constants: [],
  },
];

/**
 * The rule tables, ordered as an estimator would read them. A row that no chapter asks for stands in the last one, so
 * that a new row needs no entry here.
 * @returns the chapters, each row of the tables in exactly one
 */
export function chapters(): readonly Chapter[] {
  const left = new Set<FactorId>(factors.map(({ id }) => id));
  const planned = [GOVERNING, ...PLANS].map((plan): Chapter => {
    const own = [...left].filter((id) => plan.factors.some((start) => id.startsWith(start)));
    for (const id of own) left.delete(id);
    return { ...plan, factors: own };
  });
  const rest = <Id extends string>(table: Readonly<Record<Id, unknown>>, taken: readonly Id[]) =>
    (Object.keys(table) as Id[]).filter((id) => !taken.includes(id));
  return [
    ...planned,
    {
      title: 'Units, sums and the rest',
      words: 'A zone is the sum of its rows and the job that of its zones.',
      methods: rest<MethodId>(
        methods,
        planned.flatMap((chapter) => chapter.methods),
      ),
      factors: [...left],
      constants: rest<ConstantId>(
        constants,
        planned.flatMap((chapter) => chapter.constants),
      ),
    },
  ];
}
