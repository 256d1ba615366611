import type { Kind } from '../quantity/systems';

/** A quantity that is worked out for each row and adds up over rows, zones and the job. */
export interface AddedQuantity {
  readonly heading: string;
  readonly kind: Kind;
  /**
   * `row`: worked out at each row. `zone`: worked out for the zone and shared out over its rows. `price`: follows from
   * the others, for a row as for a zone.
   */
  readonly of: 'row' | 'zone' | 'price';
}

/** Every quantity that adds up, in the order of the columns; the name is also its symbol in a trace. */
export const addedQuantities = {
  washedArea: { heading: 'Washed area', kind: 'area', of: 'row' },
  water: { heading: 'Water', kind: 'volume', of: 'row' },
  preWetWater: { heading: 'Pre-wet water', kind: 'volume', of: 'row' },
  mixWater: { heading: 'Mix water', kind: 'volume', of: 'row' },
  rinseWater: { heading: 'Rinse water', kind: 'volume', of: 'row' },
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
  crewHours: { heading: 'Crew-hours', kind: 'crewHours', of: 'row' },
  scrapeHours: { heading: 'Scrape hours', kind: 'crewHours', of: 'row' },
  maskHours: { heading: 'Mask hours', kind: 'crewHours', of: 'row' },
  prewetHours: { heading: 'Pre-wet hours', kind: 'crewHours', of: 'zone' },
  applyHours: { heading: 'Apply hours', kind: 'crewHours', of: 'zone' },
  scrubHours: { heading: 'Scrub hours', kind: 'crewHours', of: 'row' },
  rinseHours: { heading: 'Rinse hours', kind: 'crewHours', of: 'zone' },
  unmaskHours: { heading: 'Unmask hours', kind: 'crewHours', of: 'row' },
  moveHours: { heading: 'Move hours', kind: 'crewHours', of: 'zone' },
  setupHours: { heading: 'Set-up hours', kind: 'crewHours', of: 'zone' },
  days: { heading: 'Days', kind: 'days', of: 'zone' },
  price: { heading: 'Price', kind: 'money', of: 'price' },
  priceLabour: { heading: 'Labour price', kind: 'money', of: 'price' },
  priceCleaner: { heading: 'Cleaner price', kind: 'money', of: 'price' },
  priceMasking: { heading: 'Masking price', kind: 'money', of: 'price' },
  priceWater: { heading: 'Water price', kind: 'money', of: 'price' },
  priceEquipment: { heading: 'Equipment price', kind: 'money', of: 'price' },
  priceAccess: { heading: 'Access price', kind: 'money', of: 'price' },
  priceNeutralizer: { heading: 'Neutralizer price', kind: 'money', of: 'price' },
  priceDisposal: { heading: 'Disposal price', kind: 'money', of: 'price' },
  priceContingency: { heading: 'Contingency', kind: 'money', of: 'price' },
  priceOverhead: { heading: 'Overhead', kind: 'money', of: 'price' },
  priceProfit: { heading: 'Profit', kind: 'money', of: 'price' },
} as const satisfies Record<string, AddedQuantity>;

/** The name of a quantity that adds up. */
export type QuantityId = keyof typeof addedQuantities;

/** The names in order. */
export const quantityIds = Object.keys(addedQuantities) as QuantityId[];

/** The quantities that are money. */
export const moneyIds = quantityIds.filter((id) => addedQuantities[id].of === 'price');

/** The quantities that are no money. */
export const physicalIds = quantityIds.filter((id) => addedQuantities[id].of !== 'price');

/** A value for each quantity, in base units. NaN where there is none, with the reason beside it. */
export type Quantities = Record<QuantityId, number>;

/**
 * Quantities to add to.
 * @returns a zero for each
 */
export function noQuantities(): Quantities {
  return {
    washedArea: 0,
    water: 0,
    preWetWater: 0,
    mixWater: 0,
    rinseWater: 0,
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
    scrapeHours: 0,
    maskHours: 0,
    prewetHours: 0,
    applyHours: 0,
    scrubHours: 0,
    rinseHours: 0,
    unmaskHours: 0,
    moveHours: 0,
    setupHours: 0,
    days: 0,
    price: 0,
    priceLabour: 0,
    priceCleaner: 0,
    priceMasking: 0,
    priceWater: 0,
    priceEquipment: 0,
    priceAccess: 0,
    priceNeutralizer: 0,
    priceDisposal: 0,
    priceContingency: 0,
    priceOverhead: 0,
    priceProfit: 0,
  };
}
