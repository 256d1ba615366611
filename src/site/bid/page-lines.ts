import { bidPrice, isPriced } from '../../estimate/price';
import { unitRates } from '../../estimate/unit-rates';
import type { JobEstimate, ZoneEstimate } from '../../estimate/schedule';
import { isWashedRow } from '../../hazards/washed';
import type { Kind } from '../../quantity/systems';
import { constants } from '../../rules/constants';
import type { FactorId } from '../../rules/factors';
import { DEFAULT_MORTAR } from '../../rules/mortars';
import type { FactorsInForce } from '../../rules/read-factors';
import { factorAmount } from '../amount';
import type { WallRow } from '../../walls/wall-row';
import type { PageLine } from './page-line';
import { scopeLines } from './scope-lines';

/**
 * What a bid says of the job in force: scope, quantities, what is included and what is not, clarifications, price.
 * @param estimate the job, or the zones that are bid
 * @param factors the factors in force
 * @returns the lines, in the order of the page; a finding stands in the place of numbers that there are not
 */
export function pageLines(estimate: JobEstimate, factors: FactorsInForce): PageLine[] {
  const { zones, finding } = estimate;
  const rows = zones.flatMap(({ zone }) => zone.rows);
  const said = (part: PageLine['part'], texts: readonly string[]): PageLine[] =>
    texts.map((text) => ({ part, text }));
  return [
    ...said(
      'Scope',
      zones.flatMap((zone) => scopeLines(zone, factors.system)),
    ),
    ...(finding === undefined ? quantityLines(estimate) : said('Quantities', [finding])),
    ...said('Included', included(estimate, factors)),
    ...said('Not included', notIncluded(rows, factors)),
    ...said('Clarifications', clarifications(rows, zones, factors)),
    ...(finding === undefined ? priceLines(estimate, factors) : said('Price', [finding])),
  ];
}

function line(part: PageLine['part'], text: string, value: number, kind: Kind): PageLine {
  return { part, text, amount: { value, kind } };
}

function quantityLines({ totals, jobDays }: JobEstimate): PageLine[] {
  const days = Math.max(0, Math.ceil(jobDays - constants.guard.value));
  const lines: readonly (readonly [string, number, Kind])[] = [
    ['Washed area', totals.washedArea, 'area'],
    ['Masking', totals.maskingArea, 'area'],
    ['Tape', totals.tape, 'length'],
    ['Cleaner concentrate', totals.concentrate, 'volume'],
    ['Water', totals.water, 'volume'],
    ['Runoff to collect', totals.runoff, 'volume'],
    ['Labor-hours', totals.laborHours, 'laborHours'],
    ['Working days of the whole job', days, 'days'],
  ];
  return lines
    .filter(([, value]) => value > 0)
    .map(([text, value, kind]) => line('Quantities', text, value, kind));
}

function included({ totals }: JobEstimate, factors: FactorsInForce): string[] {
  const when = (is: boolean, text: string): string[] => (is ? [text] : []);
  return [
    ...when(totals.scrapeHours > 0, 'Scraping mortar residue off before the wash.'),
    ...when(totals.brushHours > 0, 'The daily brush-down where the walls say so.'),
    ...when(totals.maskHours + totals.unmaskHours > 0, 'Masking as listed, and taking it off.'),
    ...when(totals.glassHours > 0, 'Wiping the glass down after the wash.'),
    ...when(totals.prewetHours > 0, 'Pre-wetting the masonry.'),
    ...when(totals.belowHours > 0, 'Keeping the masonry below wet while the wash runs over it.'),
    ...when(totals.washedArea > 0, 'Applying the cleaner, scrubbing and rinsing.'),
    ...when(totals.sampleHours > 0, 'Sample areas.'),
    ...when(totals.protectHours > 0, 'Protection of what lies beside the walls, by the hours of this bid.'),
    ...when(
      totals.recleanHours > 0,
      `Cleaning ${factorAmount('reclean.share', factors)} of the work again after inspection.`,
    ),
    ...when(
      totals.runoff > 0 && factors.value('runoff.captured') > 0,
      `Collecting ${factorAmount('runoff.captured', factors)} of the runoff.`,
    ),
    ...when(totals.neutralizer > 0, 'Neutralizing what is collected.'),
    ...when(totals.scaffoldHours > 0, 'Erecting and dismantling the scaffold.'),
  ];
}

const BY_OTHERS: readonly (readonly [FactorId, string])[] = [
  ['price.water', 'Water: by others, since no price is given for it.'],
  ['price.access', 'Rental of lift or scaffold: by others, since no price is given for it.'],
  ['price.disposal', 'Disposal of the runoff: by others, since no price is given for it.'],
  ['price.fixed', 'Permits, meters and hydrant: by others, since no sum is given for them.'],
];

function notIncluded(rows: readonly WallRow[], factors: FactorsInForce): string[] {
  const isGiven = (id: FactorId): boolean => factors.value(id) > 0;
  return [
    ...(isPriced(factors) ? BY_OTHERS.filter(([id]) => !isGiven(id)).map(([, text]) => text) : []),
    ...(isGiven('scaffold') ? [] : ['Erecting and dismantling a scaffold.']),
    ...(rows.some((row) => row.mask === 'only' && row.material.masonry)
      ? ['Washing of masonry that the scope leaves out.']
      : []),
    'Repair, pointing, sealers, and stains other than mortar.',
  ];
}

function clarifications(
  rows: readonly WallRow[],
  zones: readonly ZoneEstimate[],
  factors: FactorsInForce,
): string[] {
  const washed = rows.filter(isWashedRow);
  const count = (of: (row: WallRow) => boolean): number => washed.filter(of).length;
  const walls = (number: number): string => `${String(number)} ${number === 1 ? 'wall' : 'walls'}`;
  const mortar = count((row) => row.material.masonry && row.mortar === undefined);
  const residue = count((row) => row.material.masonry && row.residue === undefined);
  const height = count((row) => row.height === 0);
  const receives = zones.some(({ zone }) => zone.below.length > 0);
  const amount = (id: FactorId): string => factorAmount(id, factors);
  return [
    `A sample of each masonry, ${amount('sample.least')} at least, is washed first and accepted when dry, ${amount('sample.wait')} later at the earliest.`,
    `No cleaner goes on where air or face is below ${amount('limit.air')}, on a face at ${amount('limit.surface')} or hotter, or by spray in wind above ${amount('limit.wind')}.`,
    `Masonry is washed at ${amount('limit.age')} of age or later.`,
    ...(factors.value('weather.days') > 0
      ? [`${amount('weather.days')} lost to weather are counted in the calendar, not in the price.`]
      : []),
    ...(mortar > 0 ? [`Mortar is not stated on ${walls(mortar)}: Type ${DEFAULT_MORTAR} is assumed.`] : []),
    ...(residue > 0 ? [`Residue is not stated on ${walls(residue)}: it is assumed from the brushing.`] : []),
    ...(height > 0 ? [`Height is not stated on ${walls(height)}: ${amount('access.lift')} is assumed.`] : []),
    'The washing crew masks what the scope lists. Others keep people, cars and landscaping clear, and close windows and vents.',
    ...(receives
      ? ['Finished masonry below the wash is kept free of other work while rinse water runs over it.']
      : []),
    'The label of the cleaner, its safety data sheet and the accepted sample come before this page.',
    'The engineer and the code choose the mortar; nothing here asks for another.',
  ];
}

function priceLines({ totals }: JobEstimate, factors: FactorsInForce): PageLine[] {
  if (!isPriced(factors)) return [{ part: 'Price', text: 'No labor price is given, so there is no price.' }];
  const price = bidPrice(totals.price);
  const { pricePerArea, areaPerLaborHour } = unitRates(totals, price);
  return [
    line('Price', 'Price of the wash-down', price, 'money'),
    ...(Number.isNaN(pricePerArea) ? [] : [line('Price', 'Price per area', pricePerArea, 'moneyPerArea')]),
    ...(Number.isNaN(areaPerLaborHour)
      ? []
      : [line('Price', 'Area per labor-hour', areaPerLaborHour, 'areaPerLaborHour')]),
  ];
}
