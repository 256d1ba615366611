import type { SourceKind } from './source-kinds';
import type { SourceId } from './sources';

/** What a line of a trace rests on: the rule in words, where it comes from, and how well it is founded. */
export interface Method {
  readonly rule: string;
  readonly source: SourceId;
  readonly kind: SourceKind;
}

const computed = { source: 'geometry', kind: 'computed' } as const;
const assumed = { source: 'estimate', kind: 'assumption' } as const;
const practice = { source: 'practice', kind: 'common practice' } as const;
const sorption = { source: 'sqrt-time', kind: 'published' } as const;

/** Every rule that works out a number, by the name that the code and the trace use. */
export const methods = {
  convert: { rule: 'Conversion of units', source: 'sp811', kind: 'published' },
  row: { rule: 'Stated in the wall row', source: 'rows', kind: 'input' },
  sum: { rule: 'Sum', ...computed },
  share: {
    rule: 'Shared out by washed area, or by masked area where nothing is washed',
    ...assumed,
  },
  washedArea: { rule: 'Gross area less openings; none where masked', ...computed },
  needClass: {
    rule: 'Class that residue and mortar need',
    ...assumed,
  },
  needClassForetold: {
    rule: 'Class needed; residue foretold from brushing',
    ...assumed,
  },
  ceiling: { rule: 'Governing ceiling: least ceiling of the unmasked rows', ...practice },
  jobCeiling: { rule: 'Least ceiling of the zones', ...practice },
  mostNeed: { rule: 'Greatest need of the unmasked rows', ...computed },
  classToUse: {
    rule: 'Class to use: the gentlest that does the work, never above the ceiling',
    source: 'tn20',
    kind: 'published',
  },
  chosenClass: {
    rule: 'Class chosen by the user, never above the ceiling',
    source: 'factors',
    kind: 'override',
  },
  shortfall: { rule: 'Classes short of the need, made up by scrubbing', ...assumed },
  sorptivity: {
    rule: 'Sorptivity: the suction is the uptake of the first minute',
    ...sorption,
  },
  governingSuction: {
    rule: 'Highest sorptivity of the zone',
    ...computed,
  },
  residual: { rule: 'Uptake that may be left, as water', ...computed },
  prewetTime: {
    rule: 'Pre-wet until the uptake left for the dwell is the residual uptake',
    ...sorption,
  },
  passes: {
    rule: 'Passes of plain water',
    ...practice,
  },
  prewetContact: { rule: 'Time that the face is kept wet', ...computed },
  noPrewet: { rule: 'Clear water has no dwell, so no pre-wet', ...computed },
  prewetWater: { rule: 'Pre-wet water: uptake, and run-off of each pass', ...sorption },
  nozzleFlow: { rule: 'Flow of the rinse nozzle', source: 'nozzle-number', kind: 'published' },
  fanWidth: { rule: 'Fan width; real fans are narrower', source: 'nozzle-number', kind: 'published' },
  reactionForce: { rule: 'Reaction force of the jet', ...computed },
  rinsePerArea: {
    rule: 'Rinse water on an area',
    ...computed,
  },
  rinseWater: { rule: 'Rinse water', ...computed },
  dilution: { rule: 'Parts of water to 1 of concentrate', ...computed },
  absorbed: { rule: 'Water that the face takes up', ...sorption },
  runoff: {
    rule: 'Runoff to collect',
    ...computed,
  },
  acid: {
    rule: 'Acid in the concentrate, as HCl; none counts as used up',
    ...computed,
  },
  alkali: { rule: 'Alkali that neutralises the acid', source: 'molar-mass', kind: 'published' },
  noAcid: { rule: 'The class used is no acid', ...computed },
  priceLabour: { rule: 'Labour: crew-hours by price', ...computed },
  priceCleaner: { rule: 'Cleaner: concentrate by price', ...computed },
  priceMasking: { rule: 'Masking: film and tape by price', ...computed },
  priceWater: { rule: 'Water by price', ...computed },
  priceEquipment: { rule: 'Equipment: days by price', ...computed },
  priceAccess: { rule: 'Access: days by price', ...computed },
  priceNeutralizer: { rule: 'Alkali by price', ...computed },
  priceDisposal: { rule: 'Disposal: runoff by price', ...computed },
  priceDirect: { rule: 'Direct price', ...computed },
  priceContingency: { rule: 'Contingency on the direct price', ...computed },
  priceOverhead: { rule: 'Overhead on direct price and contingency', ...computed },
  priceProfit: { rule: 'Profit on all before it', ...computed },
  price: { rule: 'Price before it is rounded', ...computed },
  bidPrice: { rule: 'Price, rounded to cents once', ...computed },
  cleanerMix: { rule: 'Mixed cleaner', ...computed },
  concentrate: { rule: 'Concentrate in the mix', ...computed },
  mixWater: { rule: 'Water in the mix', ...computed },
  noCleaner: { rule: 'Clear water needs no cleaner', ...computed },
  water: { rule: 'Water: pre-wet, mix and rinse', ...computed },
  lapArea: { rule: 'Band of laps along the perimeters', ...computed },
  edgeFromHeight: { rule: 'Edge of a masked row: rectangle of area and height', ...computed },
  edgeFromArea: {
    rule: 'Edge of a masked row without a height: square, the least possible',
    ...assumed,
  },
  masked: { rule: 'Openings of a washed row, or the whole of a masked one', ...computed },
  fixtureArea: { rule: 'Masking of the fixtures', ...computed },
  masking: { rule: 'Masking area with laps and fixtures', ...computed },
  film: { rule: 'Film to buy, with its waste', ...computed },
  tape: { rule: 'Tape, with its waste', ...computed },
  kelvin: { rule: 'Number of degrees C', source: 'sp811', kind: 'published' },
  evaporation: {
    rule: 'Evaporation of a wet film; made for level concrete, on a wall an extrapolation',
    source: 'aci305',
    kind: 'published',
  },
  timeToDry: { rule: 'Time until the film has dried', ...computed },
  longestContact: {
    rule: 'Most dwell, or the time to dry where shorter',
    source: 'tn20',
    kind: 'published',
  },
  patch: {
    rule: 'Largest area whose first and last point stay within the dwell',
    ...computed,
  },
  wait: { rule: 'Wait between applying and rinsing', ...computed },
  noPatch: { rule: 'Clear water has no dwell, so no patch', ...computed },
  patches: { rule: 'Patches, counted whole', ...computed },
  mortarEffort: {
    rule: 'Scraping effort from the strength ratio to Type N',
    source: 'c270',
    kind: 'assumption',
  },
  mortarDefault: { rule: 'Scraping effort; no mortar is stated, so Type N is taken', ...practice },
  scrape: { rule: 'Dry scraping', ...assumed },
  scrub: {
    rule: 'Scrubbing for the milder cleaner',
    ...assumed,
  },
  maskOn: { rule: 'Masking put on, and each fixture', ...assumed },
  maskOff: { rule: 'Masking taken off', ...assumed },
  prewetHours: {
    rule: 'Pre-wet of each patch by the whole crew',
    ...assumed,
  },
  applyHours: {
    rule: 'Applying each patch, and the wait that pre-wetting the next does not fill',
    ...assumed,
  },
  rinseHours: { rule: 'Rinsing each patch by the whole crew', ...assumed },
  clearRinseHours: { rule: 'Rinsing with clear water by the whole crew', ...assumed },
  levelLength: { rule: 'Length: area by height', ...computed },
  zoneLength: {
    rule: 'Length of the zone: its longest level, levels stand above one another',
    ...computed,
  },
  moves: { rule: 'Positions along the zone, counted whole', ...computed },
  moveHours: { rule: 'Moves of the crew along the zone', ...assumed },
  otherHours: { rule: 'Crew-hours of the zone before set-up', ...computed },
  days: { rule: 'Days: hours by what the crew works beside set-up', ...computed },
  setupHours: { rule: 'Set-up and clear-up of each day', ...assumed },
  crewHours: { rule: 'Crew-hours: one person for one hour is one', ...computed },
} as const satisfies Record<string, Method>;

/** The name of a rule. */
export type MethodId = keyof typeof methods;
