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
    rule: 'What belongs to the zone is shared out by washed area, by masked area where nothing is washed',
    ...assumed,
  },
  washedArea: { rule: 'Washed area: gross area less openings; none where the row is masked', ...computed },
  needClass: {
    rule: 'Class that the residue needs; strong mortar adds to it, up to the strongest offered',
    ...assumed,
  },
  needClassForetold: {
    rule: 'Class that the residue needs, the residue foretold from brushing because none is stated',
    ...assumed,
  },
  materialCeiling: { rule: 'Strongest class that the material may meet', ...assumed },
  ceiling: { rule: 'Governing ceiling: the least of the ceilings of the unmasked rows', ...practice },
  jobCeiling: { rule: 'Least of the ceilings of the zones', ...practice },
  mostNeed: { rule: 'Greatest need among the unmasked rows', ...computed },
  classToUse: {
    rule: 'Class to use: the gentlest that does the work, never above the ceiling',
    source: 'tn20',
    kind: 'published',
  },
  chosenClass: {
    rule: 'Class to use: the class chosen by the user, never above the ceiling',
    source: 'factors',
    kind: 'override',
  },
  shortfall: { rule: 'Classes short of the need, made up by scrubbing', ...assumed },
  sorptivity: {
    rule: 'Sorptivity from the initial rate of absorption, which is the uptake of the first minute',
    ...sorption,
  },
  governingSuction: {
    rule: 'The washed row with the highest suction sets the pre-wet of the zone',
    ...computed,
  },
  residual: { rule: 'Uptake that may be left, as a volume of water', ...computed },
  prewetTime: {
    rule: 'Pre-wet until the uptake left for the dwell is at most the residual uptake',
    ...sorption,
  },
  passes: {
    rule: 'Passes of plain water: at least the least passes, each one contact time long',
    ...practice,
  },
  prewetContact: { rule: 'Time that the face is kept wet before the cleaner', ...computed },
  noPrewet: { rule: 'Clear water has no dwell, so no pre-wet', ...computed },
  prewetWater: { rule: 'Pre-wet water: what the face takes up, and the run-off of each pass', ...sorption },
  nozzleFlow: { rule: 'Flow of the rinse nozzle', source: 'nozzle-number', kind: 'published' },
  rinsePerArea: {
    rule: 'Rinse water on an area: flow by the area rinsed in a minute, times the rinses',
    ...computed,
  },
  rinseWater: { rule: 'Rinse water', ...computed },
  dilution: { rule: 'Parts of water to 1 of concentrate, of the class to use', ...computed },
  absorbed: { rule: 'Water that the face takes up while it is kept wet', ...sorption },
  runoff: {
    rule: 'Runoff to collect: all that is applied less what is taken up, times the share captured',
    ...computed,
  },
  acid: {
    rule: 'Acid in the concentrate, reckoned as HCl; what the wall uses up is counted as still there',
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
  priceDisposal: { rule: 'Disposal: collected runoff by price', ...computed },
  priceDirect: { rule: 'Direct price: the parts before mark-ups', ...computed },
  priceContingency: { rule: 'Contingency on the direct price', ...computed },
  priceOverhead: { rule: 'Overhead on direct price and contingency', ...computed },
  priceProfit: { rule: 'Profit on all before it', ...computed },
  price: { rule: 'Price before it is rounded', ...computed },
  bidPrice: { rule: 'Price, rounded to cents once', ...computed },
  cleanerMix: { rule: 'Mixed cleaner: area by coverage, times the coats', ...computed },
  concentrate: { rule: 'Concentrate in the mix of 1 part to n parts of water', ...computed },
  mixWater: { rule: 'Water in the mix', ...computed },
  noCleaner: { rule: 'Clear water needs no cleaner', ...computed },
  water: { rule: 'Water: pre-wet, mix and rinse', ...computed },
  lapArea: { rule: 'Band of laps along the perimeters', ...computed },
  edgeFromHeight: { rule: 'Edge of a masked row: a rectangle of its area and height', ...computed },
  edgeFromArea: {
    rule: 'Edge of a masked row without a height: the square of its area, the least that it can be',
    ...assumed,
  },
  perimeter: { rule: 'Perimeters that are lapped and taped', ...computed },
  masked: { rule: 'Masked surface: openings of a washed row, or the whole of a masked row', ...computed },
  fixtureArea: { rule: 'Masking of the fixtures', ...computed },
  masking: { rule: 'Masking area with laps and fixtures', ...computed },
  film: { rule: 'Film to buy: masking area and its waste', ...computed },
  tape: { rule: 'Tape: perimeters and their waste', ...computed },
  kelvin: { rule: 'Number of degrees C', source: 'sp811', kind: 'published' },
  evaporation: {
    rule: 'Evaporation of a wet film; for level concrete, on a wall an extrapolation',
    source: 'aci305',
    kind: 'published',
  },
  timeToDry: { rule: 'Time until the film has dried', ...computed },
  longestContact: {
    rule: 'Longest contact: the most dwell, or the time to dry where that is shorter',
    source: 'tn20',
    kind: 'published',
  },
  patch: {
    rule: 'Patch: the largest area whose first and last point both stay within the dwell',
    ...computed,
  },
  wait: { rule: 'Wait between the end of applying and the start of rinsing', ...computed },
  noPatch: { rule: 'Clear water has no dwell, so no patch', ...computed },
  patches: { rule: 'Patches, counted whole for the zone', ...computed },
  mortarEffort: {
    rule: 'Effort of scraping from the ratio of 28-day strengths to Type N',
    source: 'c270',
    kind: 'assumption',
  },
  mortarDefault: { rule: 'Effort of scraping; no mortar type is stated, so Type N is taken', ...practice },
  scrape: { rule: 'Dry scraping: area by rate, times the effort of the mortar', ...assumed },
  scrub: {
    rule: 'Scrubbing that makes up for the milder cleaner: area by rate, times the classes short',
    ...assumed,
  },
  maskOn: { rule: 'Masking put on: surface by rate, and a time for each fixture', ...assumed },
  maskOff: { rule: 'Masking taken off: masking area by rate', ...assumed },
  prewetHours: {
    rule: 'Pre-wet of each patch by the whole crew; the first has no wait to hide in',
    ...assumed,
  },
  applyHours: {
    rule: 'Applying each patch, and the part of the wait that pre-wetting the next does not fill',
    ...assumed,
  },
  rinseHours: { rule: 'Rinsing each patch by the whole crew', ...assumed },
  clearRinseHours: { rule: 'Rinsing with clear water by the whole crew', ...assumed },
  levelLength: { rule: 'Length of a level: area by height, summed over its rows', ...computed },
  zoneLength: {
    rule: 'Length of the zone: its longest level, since levels stand above one another',
    ...computed,
  },
  moves: { rule: 'Positions along the zone, counted whole', ...computed },
  moveHours: { rule: 'Moving the crew from position to position', ...assumed },
  otherHours: { rule: 'Crew-hours of the zone before set-up', ...computed },
  days: { rule: 'Working days: other crew-hours by what the crew works in a day beside set-up', ...computed },
  setupHours: { rule: 'Set-up and clear-up of each day', ...assumed },
  crewHours: { rule: 'Crew-hours: one person for one hour is one', ...computed },
} as const satisfies Record<string, Method>;

/** The name of a rule. */
export type MethodId = keyof typeof methods;
