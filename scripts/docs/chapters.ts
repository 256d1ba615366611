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
    'Walls that cannot be kept apart are washed with one cleaner, and the unmasked material that tolerates least sets how strong it may be. Masked masonry is washed afterwards, at no stronger class than the bare rows tolerate. Each wash gets the class up to its ceiling that takes the fewest labor-hours: a milder cleaner leaves more to the brush. Residue that is not stated is assumed: light if the work was brushed down each day, otherwise moderate.',
  methods: [
    'leftToBrush',
    'leftToBrushAssumed',
    'mortarEffort',
    'mortarDefault',
    'needClass',
    'needClassAssumed',
    'mostNeed',
    'ceiling',
    'jobCeiling',
    'laterCeiling',
    'hoursAtClass',
    'classToUse',
    'chosenClass',
  ],
  factors: ['left.', 'load.', 'scrub.', 'mortar.'],
  constants: ['guard'],
};

const PLANS: readonly Plan[] = [
  {
    title: 'Pre-wet',
    words:
      'A porous face takes up water with the square root of time. It is wet enough when the unit is full, or when it would take up no more during the minimum dwell than it may: the mix of one pass less the film that must stay on the face.',
    methods: [
      'sorptivity',
      'fieldSuction',
      'spare',
      'prewetTime',
      'passes',
      'absorbed',
      'prewetWater',
      'prewetWork',
    ],
    factors: ['prewet.', 'water.', 'rate.wet'],
    constants: ['iraTime'],
  },
  {
    title: 'The wash cycle',
    words:
      'A team washes patch after patch: apply, scrub, rinse, move on. The patch is the largest whose last point stays within the maximum dwell, scrubbing included. The quicker of applying and rinsing is slowed down, or the team waits, so that the first point gets the minimum dwell. Scrubbing that does not fit into the dwell of the smallest patch is done in more passes. While one person applies or rinses, helpers pre-wet and keep wet what lies below. What does not fit lengthens the cycle.',
    methods: [
      'rinsePressure',
      'nozzleFlow',
      'fanWidth',
      'reactionForce',
      'rinseTime',
      'applyTime',
      'scrub',
      'slowerStep',
      'washPasses',
      'scrubPass',
      'patch',
      'paced',
      'pacedByWindow',
      'wait',
      'cycle',
      'clearWaterCycle',
      'rinsedOnly',
      'oneRinse',
      'helpersFree',
      'helpersExcess',
      'held',
      'teamTime',
      'applyWork',
      'rinseWork',
      'scrubWork',
      'changeWork',
      'tend',
      'washPart',
      'accessOfRow',
      'accessUsual',
      'slowed',
    ],
    factors: [
      'dwell.',
      'patch.',
      'rate.apply',
      'rinse.',
      'nozzle.',
      'team',
      'working.',
      'texture.',
      'access.factor',
      'access.kind',
    ],
    constants: ['ratedFlow', 'ratedPressure', 'radian', 'jetCoefficient', 'minPerHour', 'onePerson'],
  },
  {
    title: 'Drying and misting',
    words: 'A face that dries before the maximum dwell is misted. The equation is one for level concrete.',
    methods: ['evaporation', 'timeToDry', 'mistings', 'mist'],
    factors: ['weather.'],
    constants: ['evaporationCoefficient', 'evaporationOffset', 'evaporationPower', 'windOffset'],
  },
  {
    title: 'What lies below',
    words:
      'Levels stand on one another. While a row is washed, what lies below it is kept wet: a strip as wide as a drop on each level, no more than is bare there.',
    methods: [
      'levelHeight',
      'rowHeight',
      'rowHeightAssumed',
      'masonryOfLevel',
      'stripBelow',
      'nothingBelow',
      'wettedBelow',
      'belowWork',
      'belowPerArea',
    ],
    factors: ['below.', 'rate.below'],
    constants: [],
  },
  {
    title: 'Water and cleaner',
    words:
      'Water is for the pre-wet, for what lies below, for misting, in the mix and for the rinse; a share of the wash is done again after inspection.',
    methods: [
      'bareArea',
      'washedArea',
      'onlyProtected',
      'notWashed',
      'leftOut',
      'rinsePerArea',
      'preWetWater',
      'belowWater',
      'mistWater',
      'rinseWater',
      'cleanerMix',
      'concentrate',
      'mixWater',
      'noCleaner',
      'recleanWater',
      'absorbedWater',
      'water',
    ],
    factors: ['cleaner.', 'reclean.'],
    constants: [],
  },
  {
    title: 'Masking and glass',
    words:
      'Openings, fixtures and masked rows are covered, with a lap along each perimeter. Glass gets its final clean.',
    methods: [
      'masked',
      'lapArea',
      'openingsEdge',
      'edgeFromHeight',
      'edgeFromArea',
      'fixtureArea',
      'masking',
      'film',
      'tape',
      'maskOn',
      'maskOff',
      'glass',
    ],
    factors: ['mask.', 'fixture.', 'tape.', 'film.', 'rate.mask', 'rate.glass'],
    constants: [],
  },
  {
    title: 'Labor-hours and days',
    words:
      'A labor-hour is one person for one hour. A crew-hour is the whole crew, all teams together, for one hour. Rates are net: an hour holds less than 60 minutes of work. What belongs to the job is split among the zones by their hours, and what belongs to a zone among its rows by washed area.',
    methods: [
      'scrape',
      'positions',
      'foot',
      'aboveGround',
      'moveHours',
      'noScaffold',
      'highScaffold',
      'scaffoldHours',
      'noBrushing',
      'brushDown',
      'reclean',
      'zoneSetup',
      'ownHours',
      'otherZone',
      'samplePanels',
      'jobHours',
      'zoneShare',
      'otherHours',
      'days',
      'jobDays',
      'setupHours',
      'hireDays',
      'laborHours',
      'crewHours',
    ],
    factors: [
      'shift',
      'setup.',
      'rate.',
      'access.',
      'scaffold',
      'mobilize.',
      'protect.',
      'hire.',
      'sample.hours',
    ],
    constants: ['oneDay'],
  },
  {
    title: 'Price',
    words:
      'Every price is yours to state and starts at nothing. It is in whatever currency you use. Supervision is a share of labor; contingency, overhead and profit are added in that order, each on all before it; the price is rounded once, at the end.',
    methods: [
      'priceLabor',
      'priceCrew',
      'priceCleaner',
      'priceMasking',
      'priceWater',
      'priceEquipment',
      'priceAccess',
      'priceNeutralizer',
      'priceDisposal',
      'priceMobilization',
      'priceProtection',
      'priceFixed',
      'priceDirect',
      'priceSupervision',
      'priceContingency',
      'priceOverhead',
      'priceProfit',
      'priceBefore',
      'shortOfMinimum',
      'priceMinimum',
      'price',
      'bidPrice',
    ],
    factors: ['price.'],
    constants: [],
  },
  {
    title: 'Runoff and neutralizer',
    words: 'All acid counts as hydrochloric, and none of it as used up on the wall.',
    methods: ['runoff', 'acid', 'bicarbonate', 'sodaAsh', 'neutralizer', 'noAcid'],
    factors: ['runoff.', 'acid.', 'neutralizer.'],
    constants: ['molarMassHCl', 'molarMassNaHCO3', 'molarMassNa2CO3', 'acidPerNaHCO3', 'acidPerNa2CO3'],
  },
  {
    title: 'Rates from recorded work',
    words:
      'The times per unit of area of the entries are taken as log-normal. The rate in force is a prior that is worth some entries, and each entry weighs by its area (normal with scaled inverse chi-squared: Gelman and others, Bayesian Data Analysis, section 3.3).',
    methods: [],
    factors: ['rates.'],
    constants: ['fence', 'upperTenth'],
  },
  {
    title: 'Limits for the checks',
    words: 'These enter no quantity. `WASH.CHECKS` and the steps compare the job with them.',
    methods: [],
    factors: ['sample.', 'limit.', 'apply.', 'wash.date'],
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
