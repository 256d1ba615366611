import type { Kind } from '../quantity/systems';

/** A quantity that is worked out for each row and adds up over rows, zones and the job. */
export interface AddedQuantity {
  readonly heading: string;
  readonly kind: Kind;
  /**
   * `row`: worked out at each row. `zone`: worked out for the zone and shared out over its rows. `job`: worked out for
   * the job and shared out over zones and rows. `sum`: follows from the hours beside it. `price`: follows from the
   * others, for a row as for a zone.
   */
  readonly of: 'row' | 'zone' | 'job' | 'sum' | 'price';
}

/** Every quantity that adds up, in the order of the columns; the name is also its symbol in a trace. */
export const addedQuantities = {
  washedArea: { heading: 'Washed area', kind: 'area', of: 'row' },
  water: { heading: 'Water', kind: 'volume', of: 'row' },
  preWetWater: { heading: 'Pre-wet water', kind: 'volume', of: 'row' },
  belowWater: { heading: 'Water below', kind: 'volume', of: 'row' },
  mistWater: { heading: 'Mist water', kind: 'volume', of: 'row' },
  mixWater: { heading: 'Mix water', kind: 'volume', of: 'row' },
  rinseWater: { heading: 'Rinse water', kind: 'volume', of: 'row' },
  recleanWater: { heading: 'Re-clean water', kind: 'volume', of: 'row' },
  absorbed: { heading: 'Water taken up', kind: 'volume', of: 'row' },
  mix: { heading: 'Mixed cleaner', kind: 'volume', of: 'row' },
  concentrate: { heading: 'Concentrate', kind: 'volume', of: 'row' },
  runoff: { heading: 'Runoff', kind: 'volume', of: 'row' },
  neutralizer: { heading: 'Neutralizer', kind: 'mass', of: 'row' },
  bicarbonate: { heading: 'Sodium bicarbonate', kind: 'mass', of: 'row' },
  sodaAsh: { heading: 'Soda ash', kind: 'mass', of: 'row' },
  maskingArea: { heading: 'Masking', kind: 'area', of: 'row' },
  film: { heading: 'Film to buy', kind: 'area', of: 'row' },
  tape: { heading: 'Tape', kind: 'length', of: 'row' },
  crewHours: { heading: 'Crew-hours', kind: 'crewHours', of: 'sum' },
  laborHours: { heading: 'Labor-hours', kind: 'laborHours', of: 'sum' },
  scrapeHours: { heading: 'Scrape hours', kind: 'laborHours', of: 'row' },
  maskHours: { heading: 'Mask hours', kind: 'laborHours', of: 'row' },
  prewetHours: { heading: 'Pre-wet hours', kind: 'laborHours', of: 'row' },
  applyHours: { heading: 'Apply hours', kind: 'laborHours', of: 'row' },
  scrubHours: { heading: 'Scrub hours', kind: 'laborHours', of: 'row' },
  rinseHours: { heading: 'Rinse hours', kind: 'laborHours', of: 'row' },
  tendHours: { heading: 'Standby hours', kind: 'laborHours', of: 'row' },
  changeHours: { heading: 'Patch change hours', kind: 'laborHours', of: 'row' },
  belowHours: { heading: 'Wetting below hours', kind: 'laborHours', of: 'row' },
  unmaskHours: { heading: 'Unmask hours', kind: 'laborHours', of: 'row' },
  glassHours: { heading: 'Glass hours', kind: 'laborHours', of: 'row' },
  moveHours: { heading: 'Move hours', kind: 'laborHours', of: 'row' },
  scaffoldHours: { heading: 'Scaffold hours', kind: 'laborHours', of: 'row' },
  brushHours: { heading: 'Brush hours', kind: 'laborHours', of: 'row' },
  recleanHours: { heading: 'Re-clean hours', kind: 'laborHours', of: 'row' },
  zonesetupHours: { heading: 'Zone set-up hours', kind: 'laborHours', of: 'zone' },
  sampleHours: { heading: 'Sample hours', kind: 'laborHours', of: 'job' },
  mobilizeHours: { heading: 'Mobilize hours', kind: 'laborHours', of: 'job' },
  protectHours: { heading: 'Protect hours', kind: 'laborHours', of: 'job' },
  setupHours: { heading: 'Set-up hours', kind: 'laborHours', of: 'zone' },
  days: { heading: 'Days', kind: 'days', of: 'zone' },
  hireDays: { heading: 'Rental days', kind: 'days', of: 'job' },
  price: { heading: 'Price', kind: 'money', of: 'price' },
  priceLabor: { heading: 'Labor price', kind: 'money', of: 'price' },
  priceCleaner: { heading: 'Cleaner price', kind: 'money', of: 'price' },
  priceMasking: { heading: 'Masking price', kind: 'money', of: 'price' },
  priceWater: { heading: 'Water price', kind: 'money', of: 'price' },
  priceEquipment: { heading: 'Equipment price', kind: 'money', of: 'price' },
  priceAccess: { heading: 'Access price', kind: 'money', of: 'price' },
  priceNeutralizer: { heading: 'Neutralizer price', kind: 'money', of: 'price' },
  priceDisposal: { heading: 'Disposal price', kind: 'money', of: 'price' },
  priceMobilization: { heading: 'Mobilization price', kind: 'money', of: 'price' },
  priceProtection: { heading: 'Protection price', kind: 'money', of: 'price' },
  priceFixed: { heading: 'Fixed sums', kind: 'money', of: 'price' },
  priceSupervision: { heading: 'Supervision', kind: 'money', of: 'price' },
  priceContingency: { heading: 'Contingency', kind: 'money', of: 'price' },
  priceOverhead: { heading: 'Overhead', kind: 'money', of: 'price' },
  priceProfit: { heading: 'Profit', kind: 'money', of: 'price' },
  priceMinimum: { heading: 'Added to reach the minimum', kind: 'money', of: 'price' },
} as const satisfies Record<string, AddedQuantity>;

/** The name of a quantity that adds up. */
export type QuantityId = keyof typeof addedQuantities;

/** The names in order. */
export const quantityIds = Object.keys(addedQuantities) as QuantityId[];

/** The quantities that are money. */
export const moneyIds = quantityIds.filter((id) => addedQuantities[id].of === 'price');

/** The quantities that are no money. */
export const physicalIds = quantityIds.filter((id) => addedQuantities[id].of !== 'price');

/** The parts that labor-hours are made of. */
export const hourParts = quantityIds.filter(
  (id) => addedQuantities[id].kind === 'laborHours' && id !== 'laborHours',
);

/** The hours of washing itself: what is cleaned once more takes them once more. */
export const washHours = [
  'prewetHours',
  'applyHours',
  'scrubHours',
  'rinseHours',
  'tendHours',
  'changeHours',
  'belowHours',
] as const satisfies readonly QuantityId[];

/** A value for each quantity, in base units. NaN where there is none, with the reason beside it. */
export type Quantities = Record<QuantityId, number>;

/**
 * Quantities to add to.
 * @returns a zero for each
 */
export function noQuantities(): Quantities {
  // Spelled out: the engine is slow to read objects that were put together key by key.
  return {
    washedArea: 0,
    water: 0,
    preWetWater: 0,
    belowWater: 0,
    mistWater: 0,
    mixWater: 0,
    rinseWater: 0,
    recleanWater: 0,
    absorbed: 0,
    mix: 0,
    concentrate: 0,
    runoff: 0,
    neutralizer: 0,
    bicarbonate: 0,
    sodaAsh: 0,
    maskingArea: 0,
    film: 0,
    tape: 0,
    crewHours: 0,
    laborHours: 0,
    scrapeHours: 0,
    maskHours: 0,
    prewetHours: 0,
    applyHours: 0,
    scrubHours: 0,
    rinseHours: 0,
    tendHours: 0,
    changeHours: 0,
    belowHours: 0,
    unmaskHours: 0,
    glassHours: 0,
    moveHours: 0,
    scaffoldHours: 0,
    brushHours: 0,
    recleanHours: 0,
    zonesetupHours: 0,
    sampleHours: 0,
    mobilizeHours: 0,
    protectHours: 0,
    setupHours: 0,
    days: 0,
    hireDays: 0,
    price: 0,
    priceLabor: 0,
    priceCleaner: 0,
    priceMasking: 0,
    priceWater: 0,
    priceEquipment: 0,
    priceAccess: 0,
    priceNeutralizer: 0,
    priceDisposal: 0,
    priceMobilization: 0,
    priceProtection: 0,
    priceFixed: 0,
    priceSupervision: 0,
    priceContingency: 0,
    priceOverhead: 0,
    priceProfit: 0,
    priceMinimum: 0,
  };
}
