import type { Unit } from '../quantity/conversions';
import type { Kind } from '../quantity/systems';
import type { Material } from './materials';
import type { SourceKind } from './source-kinds';
import type { SiteSourceId } from './site-sources';

/** What a caution is about, in the order of the sheet. */
export const cautionTopics = {
  first: 'Before anything else',
  persons: 'Eyes, skin and breath',
  height: 'Height',
  dust: 'Dust',
  pressure: 'Pressure',
  wall: 'The wall itself',
  beside: 'What stands beside and below',
  runoff: 'Water that runs off',
  weather: 'Weather',
} as const;

/** The name of a topic. */
export type CautionTopic = keyof typeof cautionTopics;

/** A number in the text of a caution: one that follows the user's system, or one that is the same everywhere. */
export type CautionNumber =
  | { readonly value: number; readonly unit: Unit; readonly kind: Kind }
  | { readonly value: number; readonly unit: 'ppm' | 'pH' | 's' | 'min' | 'h' | 'ug/m3' | 'times' };

/** What must hold in a zone for a caution to apply. */
export type CautionWhen =
  /** whatever is done, once for the whole job */
  | 'always'
  /** some wall of the zone is washed */
  | 'washed'
  /** washed with a cleaner, class 1 or stronger */
  | 'cleaner'
  /** washed with an acid, class 2 or 3 */
  | 'acid'
  /** washed walls of `groups` meet an acid */
  | 'acid on group'
  /** washed walls of `groups`, whatever they are washed with */
  | 'washed group'
  /** a cleaner is used on or beside walls of `groups`, washed or masked */
  | 'cleaner beside group'
  /** an acid is used beside masked walls of `groups` */
  | 'acid beside masked group'
  /** a cleaner is used beside openings */
  | 'cleaner beside openings'
  /** a masked wall may not meet the class that is used */
  | 'weaker masked'
  /** a wall lower down may not meet the class that is used */
  | 'weaker below'
  /** there are fixtures to cover */
  | 'fixtures'
  /** the zone is higher than `workAtHeight`, or some height is not stated */
  | 'height'
  /** residue is scraped off dry */
  | 'scrape'
  /** some wall is washed; how much water is to be collected */
  | 'runoff'
  /** some wall is washed; what the weather is */
  | 'weather'
  /** alkali is used to neutralise */
  | 'alkali'
  /** some wall of the zone is rinsed */
  | 'jet'
  /** the nozzle is set nearer than the least distance, or its fan narrower than the narrowest */
  | 'narrow jet'
  /** the pressure set is more than the most sensitive washed wall takes */
  | 'over pressure'
  /** a washed wall is younger than the youngest to wash */
  | 'too young'
  /** air or face is colder than the coldest to wash in */
  | 'too cold'
  /** the cleaner dries before its most dwell */
  | 'dries early';

/** One caution of the trade, of a standard or of a regulation. */
export interface Caution {
  readonly id: string;
  readonly topic: CautionTopic;
  /** `{name}` stands for a number of `numbers`, `{factor:id}` for a factor in force. */
  readonly text: string;
  readonly numbers?: Readonly<Record<string, CautionNumber>>;
  readonly when: CautionWhen;
  readonly groups?: readonly Material['group'][];
  /** True where the workbook as it stands breaks the caution. */
  readonly stop?: true;
  readonly source: SiteSourceId;
  readonly kind: SourceKind;
}

const practice = { source: 'practice', kind: 'common practice' } as const;
const memory = { source: 'memory', kind: 'from memory' } as const;
const advice = { source: 'tn20', kind: 'published' } as const;

/** The height above which a zone counts as work at height: that of fall protection on a scaffold, 29 CFR 1926.451. */
export const workAtHeight = { value: 10, unit: 'ft', kind: 'length' } as const satisfies CautionNumber;

/** What stands before any number that is used on site. */
export const LABEL_FIRST =
  "The product's label, its safety data sheet, local codes and licensed practice come before these numbers.";

/** Every caution. Those that come before all others stand first. */
export const cautions: readonly Caution[] = [
  {
    id: 'label',
    topic: 'first',
    text: "Follow the product's label. It decides dilution, dwell, pressure and what the product may touch; where it differs from this workbook, the label holds.",
    when: 'always',
    ...practice,
  },
  {
    id: 'safety-data-sheet',
    topic: 'first',
    text: "Keep the product's safety data sheet at hand and read it first: protection to wear, first aid, storage, spills, disposal.",
    when: 'always',
    ...practice,
  },
  {
    id: 'local-codes',
    topic: 'first',
    text: 'Keep to local codes and permits. Ask the local authority about water, runoff, noise and work beside public ways.',
    when: 'always',
    ...practice,
  },
  {
    id: 'licensed-practice',
    topic: 'first',
    text: 'Leave to licensed persons what is theirs: electrical work, scaffold design, waste, structural judgement. This sheet replaces none of them.',
    when: 'always',
    ...practice,
  },
  {
    id: 'makers-advice',
    topic: 'first',
    text: 'The advice of the maker of the brick, block or stone comes before the general rules below.',
    when: 'always',
    ...advice,
  },
  {
    id: 'protection-to-wear',
    topic: 'persons',
    text: 'Wear the eye, face, hand and body protection that the safety data sheet names. Rinse a splash off at once, then follow its first aid.',
    when: 'cleaner',
    ...practice,
  },
  {
    id: 'acid-into-water',
    topic: 'persons',
    text: 'Pour concentrate into water, never water into concentrate.',
    when: 'acid',
    source: 'acid-dilution-1971',
    kind: 'published',
  },
  {
    id: 'drenching',
    topic: 'persons',
    text: 'Have water to drench eyes and body within the work area wherever corrosive cleaner is handled.',
    when: 'acid',
    source: 'cfr-1926.50',
    kind: 'published',
  },
  {
    id: 'eyewash',
    topic: 'persons',
    text: 'An eyewash is reached within {reach} and flows for {flow}.',
    numbers: { reach: { value: 10, unit: 's' }, flow: { value: 15, unit: 'min' } },
    when: 'acid',
    source: 'z358.1',
    kind: 'published',
  },
  {
    id: 'hydrogen-chloride',
    topic: 'persons',
    text: 'Hydrogen chloride in the air one breathes: never above {ceiling}. Stay upwind, keep enclosed places aired.',
    numbers: { ceiling: { value: 5, unit: 'ppm' } },
    when: 'acid',
    source: 'osha-pel',
    kind: 'published',
  },
  {
    id: 'fluoride-air',
    topic: 'persons',
    text: 'Look for fluoride in the safety data sheet. Hydrogen fluoride in the air: at most {most} over {over}.',
    numbers: { most: { value: 3, unit: 'ppm' }, over: { value: 8, unit: 'h' } },
    when: 'acid',
    source: 'osha-pel',
    kind: 'published',
  },
  {
    id: 'fluoride-burn',
    topic: 'persons',
    text: 'Fluoride burns deep and may not hurt at first; its first aid is of its own kind. Have it ready before the drum is opened.',
    when: 'acid',
    ...memory,
  },
  {
    id: 'no-mixing',
    topic: 'persons',
    text: 'Never mix cleaner with another product, bleach least of all.',
    when: 'cleaner',
    ...memory,
  },
  {
    id: 'slipping',
    topic: 'persons',
    text: 'Wet boards, ground and hoses are slippery. Keep walkways clear and persons out of the spray.',
    when: 'washed',
    ...practice,
  },
  {
    id: 'fall-protection',
    topic: 'height',
    text: 'Fall protection on a scaffold above {above}.',
    numbers: { above: workAtHeight },
    when: 'height',
    source: 'cfr-1926.451',
    kind: 'published',
  },
  {
    id: 'scaffold-load',
    topic: 'height',
    text: 'A scaffold carries its own weight and {times} its greatest load: count water, drums and wet masking in.',
    numbers: { times: { value: 4, unit: 'times' } },
    when: 'height',
    source: 'cfr-1926.451',
    kind: 'published',
  },
  {
    id: 'lift-lanyard',
    topic: 'height',
    text: 'In a boom lift, wear a harness with its lanyard tied to the boom or basket.',
    when: 'height',
    source: 'cfr-1926.453',
    kind: 'published',
  },
  {
    id: 'below-the-work',
    topic: 'height',
    text: 'Bar the ground below the work; protect entrances and ways out that stay in use.',
    when: 'height',
    ...practice,
  },
  {
    id: 'power-lines',
    topic: 'height',
    text: 'Keep lifts, scaffold, wands and water away from overhead lines; the utility says how far.',
    when: 'height',
    ...memory,
  },
  {
    id: 'silica',
    topic: 'dust',
    text: 'Dust of mortar and masonry holds crystalline silica: at most {most} of respirable silica over {over}. Wet or extract the dust, or wear what the limit asks for.',
    numbers: { most: { value: 50, unit: 'ug/m3' }, over: { value: 8, unit: 'h' } },
    when: 'scrape',
    source: 'cfr-1926.1153',
    kind: 'from memory',
  },
  {
    id: 'scraping-tools',
    topic: 'dust',
    text: 'Scrape and brush with wood or other tools that are not metal.',
    when: 'scrape',
    ...advice,
  },
  {
    id: 'jet',
    topic: 'pressure',
    text: 'A jet cuts skin and eyes and pushes back. Point it at nobody, hold it with both hands, take the pressure off before changing a tip.',
    when: 'jet',
    ...memory,
  },
  {
    id: 'over-pressure',
    topic: 'pressure',
    text: 'Lower the pressure: the wall takes less than the workbook has set.',
    when: 'over pressure',
    stop: true,
    ...practice,
  },
  {
    id: 'narrow-jet',
    topic: 'pressure',
    text: 'A narrow tip or a short distance harms joints and sensitive faces: at least {factor:limit.distance} off, a fan of {factor:limit.angle} or wider.',
    when: 'jet',
    ...practice,
  },
  {
    id: 'too-narrow-jet',
    topic: 'pressure',
    text: 'Keep further off, or take a wider fan: the workbook has set less than the least.',
    when: 'narrow jet',
    stop: true,
    ...practice,
  },
  {
    id: 'no-blasting',
    topic: 'pressure',
    text: 'No blasting with grit.',
    when: 'washed',
    source: 'masonry-textbook',
    kind: 'published',
  },
  {
    id: 'sample-area',
    topic: 'wall',
    text: 'Wash a sample area of {factor:sample.least} first, by the same method, and look at it when it is dry.',
    when: 'washed',
    ...advice,
  },
  {
    id: 'sample-wait',
    topic: 'wall',
    text: 'Leave {factor:sample.wait} or more between the sample and the work.',
    when: 'washed',
    source: 'masonry-textbook',
    kind: 'published',
  },
  {
    id: 'too-young',
    topic: 'wall',
    text: 'Wait: masonry is washed when it is {factor:limit.age} old or more.',
    when: 'too young',
    stop: true,
    ...advice,
  },
  {
    id: 'wet-first',
    topic: 'wall',
    text: 'Saturate the area, and the masonry below it, before the cleaner; keep both wet until the final rinse.',
    when: 'cleaner',
    ...advice,
  },
  {
    id: 'never-dry',
    topic: 'wall',
    text: 'Never let cleaner dry on the wall.',
    when: 'cleaner',
    ...advice,
  },
  {
    id: 'no-unbuffered-acid',
    topic: 'wall',
    text: 'No unbuffered muriatic acid.',
    when: 'cleaner',
    ...advice,
  },
  {
    id: 'stain',
    topic: 'wall',
    text: 'Acid can bring out vanadium or manganese stain that rinsing does not take off.',
    when: 'acid on group',
    groups: ['light brick'],
    source: 'tn20-older',
    kind: 'from memory',
  },
  {
    id: 'paste-film',
    topic: 'wall',
    text: 'Harsh washing strips the paste film of block: treat the whole wall alike, with special care where materials meet.',
    when: 'washed group',
    groups: ['block'],
    source: 'tek8-4a',
    kind: 'published',
  },
  {
    id: 'block-etched',
    topic: 'beside',
    text: 'Acid cleaner for brick can etch block beside and below it: protect the block.',
    when: 'acid beside masked group',
    groups: ['block'],
    source: 'trade-magazine',
    kind: 'published',
  },
  {
    id: 'weaker-masked',
    topic: 'beside',
    text: 'Seal the upper edge of the masking: what lies under it may not meet this cleaner. Rinse at once where it leaks.',
    when: 'weaker masked',
    ...practice,
  },
  {
    id: 'weaker-below',
    topic: 'beside',
    text: 'Rinse water carries the cleaner down over walls that may not meet it: mask them, or keep them wet and rinsed until the end.',
    when: 'weaker below',
    ...advice,
  },
  {
    id: 'glass',
    topic: 'beside',
    text: 'Cover glass, coated glass above all. Cleaner that got under is rinsed off before it dries: etched glass cannot be mended.',
    when: 'cleaner beside group',
    groups: ['glass'],
    ...practice,
  },
  {
    id: 'openings',
    topic: 'beside',
    text: 'Cover the glass and frames of openings, seal the joints, and keep ways out of the building usable.',
    when: 'cleaner beside openings',
    ...practice,
  },
  {
    id: 'metal',
    topic: 'beside',
    text: 'Cover metal: acid dissolves zinc, dulls finishes and stains the wall below.',
    when: 'cleaner beside group',
    groups: ['metal'],
    ...memory,
  },
  {
    id: 'stone',
    topic: 'beside',
    text: 'Lime-bound and polished stone dissolves or dulls in acid: seal its cover, and keep water running below.',
    when: 'acid beside masked group',
    groups: ['stone'],
    ...memory,
  },
  {
    id: 'electrical',
    topic: 'beside',
    text: 'Have electrical openings and fittings made dead by a licensed person before they are covered and before water comes near.',
    when: 'fixtures',
    ...practice,
  },
  {
    id: 'planting',
    topic: 'beside',
    text: 'Wet planting, soil and vehicles below, cover them, and rinse them afterwards.',
    when: 'cleaner',
    ...practice,
  },
  {
    id: 'plan-runoff',
    topic: 'runoff',
    text: 'Plan where the water goes before it runs.',
    when: 'runoff',
    ...advice,
  },
  {
    id: 'storm-drain',
    topic: 'runoff',
    text: 'Into a storm drain, the ground or open water: ask the local authority. Permits for building sites often allow wash-down water only without soap, solvent or detergent.',
    when: 'washed',
    source: 'construction-permit',
    kind: 'from memory',
  },
  {
    id: 'sewer',
    topic: 'runoff',
    text: 'Into a sewer: not below pH {least}, unless the treatment works is designed for it; ask the works first.',
    numbers: { least: { value: 5, unit: 'pH' } },
    when: 'cleaner',
    source: 'cfr-403.5',
    kind: 'published',
  },
  {
    id: 'corrosive-waste',
    topic: 'runoff',
    text: 'Waste at pH {low} or less, or pH {high} or more, is corrosive waste: a licensed carrier takes it.',
    numbers: { low: { value: 2, unit: 'pH' }, high: { value: 12.5, unit: 'pH' } },
    when: 'acid',
    source: 'cfr-261.22',
    kind: 'from memory',
  },
  {
    id: 'neutralising',
    topic: 'runoff',
    text: 'Alkali foams in acid and gives off carbon dioxide: add it little by little in the open, and measure the pH before and after.',
    when: 'alkali',
    ...memory,
  },
  {
    id: 'freezing',
    topic: 'weather',
    text: 'Air and face above {factor:limit.air}, and staying so until the wall is dry.',
    when: 'weather',
    source: 'trade-site',
    kind: 'published',
  },
  {
    id: 'too-cold',
    topic: 'weather',
    text: 'Wait for warmer weather, or heat and enclose: a saturated wall that freezes spalls.',
    when: 'too cold',
    stop: true,
    source: 'trade-site',
    kind: 'published',
  },
  {
    id: 'dries-early',
    topic: 'weather',
    text: 'The cleaner dries before its most dwell is over: wash smaller areas, in shade, or at a cooler hour.',
    when: 'dries early',
    ...advice,
  },
];
