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
  beside: 'Beside and below the wall',
  runoff: 'Runoff',
  weather: 'Weather',
} as const;

/** The name of a topic. */
export type CautionTopic = keyof typeof cautionTopics;

/** A number in the text of a caution: one that follows the user's system, or one that is the same everywhere. */
export type CautionNumber =
  | { readonly value: number; readonly unit: Unit; readonly kind: Kind }
  | {
      readonly value: number;
      readonly unit: 'ppm' | 'pH' | 's' | 'min' | 'h' | 'ug/m3' | 'times' | 'V' | 'kV';
    };

/** What must hold in a zone for a caution to apply. The rules of those that can harm stand in `src/hazards/`. */
export type CautionWhen =
  /** whatever is done, once for the whole job */
  | 'always'
  /** some wall of the zone is washed */
  | 'washed'
  /** washed with a cleaner, class 1 or stronger */
  | 'cleaner'
  /** washed with an acid, class 2 or 3 */
  | 'acid'
  /** an acid is used on a wall that is reached from suspended scaffold */
  | 'acid on suspended scaffold'
  /** light or manganese-colored brick meets an acid */
  | 'stain under acid'
  /** concrete or other calcareous masonry meets an acid */
  | 'acid on calcareous'
  /** washed walls of `groups`, whatever they are washed with */
  | 'washed group'
  /** a cleaner is used on or beside walls of `groups`, washed or masked */
  | 'cleaner beside group'
  /** glass or metal is washed along with the wall */
  | 'unmasked glass or metal'
  /** an acid is used beside masked walls of `groups` */
  | 'acid beside masked group'
  /** a cleaner is used beside openings */
  | 'cleaner beside openings'
  /** a masked wall may not meet the class that is used */
  | 'weaker masked'
  /** a masked wall lower down, or one that receives the rinse, may not meet the class that is used */
  | 'weaker below'
  /** there are fixtures to cover */
  | 'fixtures'
  /** the zone is higher than `workAtHeight`, or some height is not stated */
  | 'height'
  /** residue is scraped and brushed off */
  | 'dust'
  /** some wall is washed; how much water is to be collected */
  | 'runoff'
  /** some wall is washed; what the weather is */
  | 'weather'
  /** alkali is used to neutralise */
  | 'alkali'
  /** some wall of the zone is rinsed */
  | 'jet'
  /** the nozzle is held closer than the least standoff, or its fan is narrower than the narrowest */
  | 'narrow jet'
  /** the nozzle is set to more pressure than a washed wall takes */
  | 'over pressure'
  /** cleaner is put on with more pressure than is published */
  | 'applied under pressure'
  /** no sample area was inspected, or too small a one */
  | 'sample missing'
  /** a washed wall is younger than the youngest to wash */
  | 'too young'
  /** a washed wall is older than its smears stay soft */
  | 'too old'
  /** air or face is colder than the coldest to wash in */
  | 'too cold'
  /** the face is as hot as the limit, or hotter */
  | 'too hot'
  /** there is more wind than cleaner may be sprayed in */
  | 'too windy'
  /** the cleaner dries before its maximum dwell */
  | 'dries early'
  /** the cleaner dries before its minimum dwell */
  | 'dries too soon';

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
const ours = { source: 'estimate', kind: 'assumption' } as const;
const advice = { source: 'tn20', kind: 'published' } as const;
const published = <Id extends SiteSourceId>(source: Id) => ({ source, kind: 'published' }) as const;

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
    text: 'Leave to licensed persons what is theirs: electrical work, scaffold design, waste, structural judgment. This sheet replaces none of them.',
    when: 'always',
    ...practice,
  },
  {
    id: 'makers-advice',
    topic: 'first',
    text: "The manufacturer's advice for the brick, block or stone comes before the general rules below.",
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
    id: 'hazard-communication',
    topic: 'persons',
    text: 'Label every container, sprayer and bucket of mix with the product and its hazards. Tell everyone who handles it what the safety data sheet says.',
    when: 'cleaner',
    ...published('cfr-1910.1200'),
  },
  {
    id: 'respirator',
    topic: 'persons',
    text: 'Keep mist and fumes out of the air that people breathe first. Where that is not enough, the employer provides the respirator that fits the hazard, under a written respiratory protection program.',
    when: 'cleaner',
    ...published('cfr-1910.134'),
  },
  {
    id: 'acid-into-water',
    topic: 'persons',
    text: 'Pour concentrate into water, never water into concentrate.',
    when: 'acid',
    ...published('masonry-1971'),
  },
  {
    id: 'drenching',
    topic: 'persons',
    text: 'Have water to drench eyes and body within the work area wherever corrosive cleaner is handled.',
    when: 'acid',
    ...published('cfr-1926.50'),
  },
  {
    id: 'eyewash',
    topic: 'persons',
    text: 'An eyewash is reached within {reach} and flows for {flow}.',
    numbers: { reach: { value: 10, unit: 's' }, flow: { value: 15, unit: 'min' } },
    when: 'acid',
    ...published('wac-296-800-15030'),
  },
  {
    id: 'hydrogen-chloride',
    topic: 'persons',
    text: 'Hydrogen chloride in the air you breathe: never above {ceiling}. Stay upwind, keep enclosed places aired.',
    numbers: { ceiling: { value: 5, unit: 'ppm' } },
    when: 'acid',
    ...published('cfr-1926.55'),
  },
  {
    id: 'fluoride-air',
    topic: 'persons',
    text: 'Look for fluoride in the safety data sheet. Hydrogen fluoride in the air: at most {most} over {over}.',
    numbers: { most: { value: 3, unit: 'ppm' }, over: { value: 8, unit: 'h' } },
    when: 'acid',
    ...published('cfr-1926.55'),
  },
  {
    id: 'fluoride-burn',
    topic: 'persons',
    text: 'Fluoride burns deep and may not hurt at first; rinsing alone does not stop it.',
    when: 'acid',
    ...published('fluoride-burns'),
  },
  {
    id: 'calcium-gluconate',
    topic: 'persons',
    text: 'Where section 4 of the safety data sheet names calcium gluconate, have it at hand before the drum is opened, and tell the doctor about the fluoride.',
    when: 'acid',
    ...published('hf-first-aid'),
  },
  {
    id: 'no-mixing',
    topic: 'persons',
    text: 'Never mix cleaner with another product: acid and bleach give off chlorine, a poisonous gas, at once. Rinse between products, empty the sprayer, and keep bleach off the wall until the acid is rinsed off.',
    when: 'cleaner',
    ...published('chlorine'),
  },
  {
    id: 'slipping',
    topic: 'persons',
    text: 'Wet boards, ground and hoses are slippery. Keep walkways clear and persons out of the spray.',
    when: 'washed',
    ...practice,
  },
  {
    id: 'heat-stress',
    topic: 'persons',
    text: 'In heat: keep water at hand and drink every {every}, rest in the shade, and ease new workers in. Confusion or collapse is an emergency: call for help and cool the person.',
    numbers: { every: { value: 15, unit: 'min' } },
    when: 'weather',
    ...published('heat-stress'),
  },
  {
    id: 'cold-stress',
    topic: 'persons',
    text: 'In cold, wet and wind: waterproof layers, dry clothes to change into, breaks in a warm dry place, work in pairs. Shivering that will not stop, slurred speech or confusion is an emergency.',
    when: 'weather',
    ...published('osha-cold'),
  },
  {
    id: 'carbon-monoxide',
    topic: 'persons',
    text: 'Run engine-driven washers and generators in the open, away from doors, windows and air intakes. Carbon monoxide kills within minutes; open doors and fans do not make an enclosed place safe.',
    when: 'jet',
    ...published('niosh-96-118'),
  },
  {
    id: 'gfci',
    topic: 'persons',
    text: 'Plug electric washers and tools into a GFCI: 120-volt, 15- and 20-ampere receptacles of temporary wiring need one, or an assured equipment grounding conductor program.',
    when: 'jet',
    ...published('cfr-1926.404'),
  },
  {
    id: 'cords',
    topic: 'persons',
    text: 'Test the GFCI before use. Use undamaged cords rated for wet locations, and keep their connections out of the water.',
    when: 'jet',
    ...published('pressure-washers'),
  },
  {
    id: 'fall-protection',
    topic: 'height',
    text: 'Fall protection on a scaffold above {above}.',
    numbers: { above: workAtHeight },
    when: 'height',
    ...published('cfr-1926.451'),
  },
  {
    id: 'scaffold-load',
    topic: 'height',
    text: 'A scaffold carries its own weight and {times} its greatest load: count water, drums and wet masking in.',
    numbers: { times: { value: 4, unit: 'times' } },
    when: 'height',
    ...published('cfr-1926.451'),
  },
  {
    id: 'scaffold-wind',
    topic: 'height',
    text: 'No work on a scaffold in a storm or high wind, unless a competent person finds it safe and everyone is tied off or behind wind screens that the scaffold is secured for. Sheeting catches wind.',
    when: 'height',
    ...published('cfr-1926.451-wind'),
  },
  {
    id: 'suspended-ropes',
    topic: 'height',
    text: 'Suspended scaffold: shield its ropes from acid, or use ropes treated against it or of a material that it does not damage. Rinse what splashes on them.',
    when: 'acid on suspended scaffold',
    ...published('cfr-1926.451-ropes'),
  },
  {
    id: 'lift-lanyard',
    topic: 'height',
    text: 'In a boom lift, wear a harness with its lanyard tied to the boom or basket.',
    when: 'height',
    ...published('cfr-1926.453'),
  },
  {
    id: 'ladder-jet',
    topic: 'height',
    text: 'Run no jet from a ladder: its push throws the person off balance. Use a scaffold, a lift or a longer wand from the ground.',
    when: 'height',
    ...practice,
  },
  {
    id: 'below-the-work',
    topic: 'height',
    text: 'Barricade the area below the work; protect entrances and exits that stay in use.',
    when: 'height',
    ...practice,
  },
  {
    id: 'power-lines',
    topic: 'height',
    text: 'Keep lifts, scaffold, wands and anything that conducts electricity {far} or more from energized lines of up to {high}, and {more} farther for each kV above; {near} from insulated lines under {low}. Ask the utility first; water conducts too.',
    numbers: {
      far: { value: 10, unit: 'ft', kind: 'length' },
      high: { value: 50, unit: 'kV' },
      more: { value: 0.4, unit: 'in', kind: 'shortLength' },
      near: { value: 3, unit: 'ft', kind: 'length' },
      low: { value: 300, unit: 'V' },
    },
    when: 'height',
    ...published('cfr-1926.451-lines'),
  },
  {
    id: 'silica',
    topic: 'dust',
    text: 'Mortar and masonry dust contains crystalline silica: at most {most} of respirable silica over {over}.',
    numbers: { most: { value: 50, unit: 'ug/m3' }, over: { value: 8, unit: 'h' } },
    when: 'dust',
    ...published('cfr-1926.1153'),
  },
  {
    id: 'no-dry-brushing',
    topic: 'dust',
    text: 'No dry brushing or sweeping that adds silica dust to the air: brush wet or use a HEPA vacuum, wherever that is feasible.',
    when: 'dust',
    ...published('cfr-1926.1153-f'),
  },
  {
    id: 'scraping-tools',
    topic: 'dust',
    text: 'Scrape and brush with wood or other tools that are not metal.',
    when: 'dust',
    ...advice,
  },
  {
    id: 'jet',
    topic: 'pressure',
    text: 'Never point the jet at anyone, yourself included.',
    when: 'jet',
    ...published('pressure-washers'),
  },
  {
    id: 'jet-in-hand',
    topic: 'pressure',
    text: 'Hold the jet with both hands; take the pressure off before you change a tip.',
    when: 'jet',
    ...practice,
  },
  {
    id: 'injection',
    topic: 'pressure',
    text: 'A wound from the jet looks small and can cost a limb. See a doctor at once, however minor it looks; say that it was high-pressure water, and what was in it.',
    when: 'jet',
    ...published('injection-wounds'),
  },
  {
    id: 'over-pressure',
    topic: 'pressure',
    text: 'Turn the pressure down before these walls: the nozzle is set to more than they take.',
    when: 'over pressure',
    stop: true,
    ...practice,
  },
  {
    id: 'narrow-jet',
    topic: 'pressure',
    text: 'Hold the nozzle {factor:limit.distance} or more from the wall, with a fan of {factor:limit.angle} or wider: closer or narrower cuts joints and faces.',
    when: 'jet',
    ...practice,
  },
  {
    id: 'too-narrow-jet',
    topic: 'pressure',
    text: 'Hold the nozzle farther away, or use a wider fan: the workbook has set less than {factor:limit.distance} or {factor:limit.angle}.',
    when: 'narrow jet',
    stop: true,
    ...practice,
  },
  {
    id: 'low-pressure',
    topic: 'pressure',
    text: 'Apply cleaner with a brush, or with a sprayer at {most} or less.',
    numbers: { most: { value: 50, unit: 'psi', kind: 'pressure' } },
    when: 'cleaner',
    ...published('masonry-textbook'),
  },
  {
    id: 'applied-under-pressure',
    topic: 'pressure',
    text: 'Apply the cleaner at less pressure, or with a brush: more drives it into the wall.',
    when: 'applied under pressure',
    stop: true,
    ...published('pressure-cleaning'),
  },
  {
    id: 'no-blasting',
    topic: 'pressure',
    text: 'No abrasive blasting.',
    when: 'washed',
    ...published('masonry-textbook'),
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
    text: 'Wait {factor:sample.wait} or more, and until it is dry, before the sample is inspected.',
    when: 'washed',
    ...published('masonry-textbook'),
  },
  {
    id: 'sample-missing',
    topic: 'wall',
    text: 'Wash and inspect the sample first: the workbook states less than {factor:sample.least} inspected.',
    when: 'sample missing',
    ...advice,
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
    id: 'too-old',
    topic: 'wall',
    text: 'Smears have hardened by now: clay brick is best cleaned by {factor:limit.late}, block and strong mortar sooner. Try the sample first, and do not make up for it with stronger acid or more pressure.',
    when: 'too old',
    ...published('masonry-2007'),
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
    when: 'stain under acid',
    ...published('masonry-construction'),
  },
  {
    id: 'acid-on-concrete',
    topic: 'wall',
    text: 'Acid dissolves concrete and lime: a public specification (UFGS 04900) allows no acidic cleaner on limestone, marble, concrete and other calcareous masonry. Use class 1, or get written approval from the unit manufacturer and an accepted sample.',
    when: 'acid on calcareous',
    ...published('ufgs-04900'),
  },
  {
    id: 'paste-film',
    topic: 'wall',
    text: 'Harsh washing and acid take the cement paste off the face of block and change its look: treat the whole wall alike, with special care where materials meet.',
    when: 'washed group',
    groups: ['block'],
    ...published('masonry-1994'),
  },
  {
    id: 'block-etched',
    topic: 'beside',
    text: 'Acid cleaner for brick can etch block beside and below it: protect the block.',
    when: 'acid beside masked group',
    groups: ['block'],
    ...published('masonry-1997'),
  },
  {
    id: 'weaker-masked',
    topic: 'beside',
    text: 'Seal the upper edge of the masking: this cleaner must not touch what is under it. Rinse at once where it leaks.',
    when: 'weaker masked',
    ...practice,
  },
  {
    id: 'weaker-below',
    topic: 'beside',
    text: 'Rinse water carries the cleaner down over walls that it must not touch: mask them, or keep them wet and rinsed until the end.',
    when: 'weaker below',
    ...advice,
  },
  {
    id: 'glass',
    topic: 'beside',
    text: 'Cover glass, coated glass above all. Cleaner that got under the film is rinsed off at once: etched glass cannot be repaired.',
    when: 'cleaner beside group',
    groups: ['glass'],
    ...practice,
  },
  {
    id: 'openings',
    topic: 'beside',
    text: 'Cover the glass and frames of openings, seal the joints, and keep exits usable.',
    when: 'cleaner beside openings',
    ...practice,
  },
  {
    id: 'metal',
    topic: 'beside',
    text: 'Cover metal: strong cleaner harms bare metal and spots painted metal.',
    when: 'cleaner beside group',
    groups: ['metal'],
    ...published('bare-metal'),
  },
  {
    id: 'unmasked',
    topic: 'beside',
    text: 'Glass or metal is washed with the wall: mask it, or test the cleaner and the jet on it first.',
    when: 'unmasked glass or metal',
    ...practice,
  },
  {
    id: 'stone',
    topic: 'beside',
    text: 'Keep acid off limestone, marble and other lime-bound stone: seal the cover, and keep water running below.',
    when: 'acid beside masked group',
    groups: ['stone'],
    ...published('ufgs-04900'),
  },
  {
    id: 'electrical',
    topic: 'beside',
    text: 'Have electrical openings and fittings de-energized and locked out by a licensed person before they are covered and before water comes near.',
    when: 'fixtures',
    ...practice,
  },
  {
    id: 'landscaping',
    topic: 'beside',
    text: 'Find out where the wind takes spray and mist. Keep people out of it, move cars or cover them, wet and cover landscaping, and rinse all of it afterward. Clear film over plants in the sun kills them.',
    when: 'cleaner',
    ...published('overspray'),
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
    text: 'Into a storm drain, the ground or open water: ask the local authority. The federal permit for building sites allows building wash-down water only without soap, solvent, detergent or hazardous substances.',
    when: 'washed',
    ...published('construction-permit'),
  },
  {
    id: 'sewer',
    topic: 'runoff',
    text: 'Into a sewer: not below pH {least}, unless the treatment plant is designed for it; ask the plant first.',
    numbers: { least: { value: 5, unit: 'pH' } },
    when: 'cleaner',
    ...published('cfr-403.5'),
  },
  {
    id: 'corrosive-waste',
    topic: 'runoff',
    text: 'Waste at pH {low} or less, or pH {high} or more, is corrosive waste: a licensed hauler takes it.',
    numbers: { low: { value: 2, unit: 'pH' }, high: { value: 12.5, unit: 'pH' } },
    when: 'acid',
    ...published('cfr-261.22'),
  },
  {
    id: 'neutralizing',
    topic: 'runoff',
    text: 'Alkali foams in acid: add it slowly, in the open, and measure the pH before and after.',
    when: 'alkali',
    ...published('acid-neutralizing'),
  },
  {
    id: 'freezing',
    topic: 'weather',
    text: 'Wash only while air and wall are above {factor:limit.air}, and stay so until the wall is dry and for {after} or more after that.',
    numbers: { after: { value: 7, unit: 'd', kind: 'days' } },
    when: 'weather',
    ...published('ufgs-04900'),
  },
  {
    id: 'too-cold',
    topic: 'weather',
    text: 'Apply no cleaner, and start no washing: wait for warmer weather, or heat and enclose. Cleaner that is on the wall is still rinsed off.',
    when: 'too cold',
    stop: true,
    ...published('ufgs-04900'),
  },
  {
    id: 'too-hot',
    topic: 'weather',
    text: 'Apply no cleaner to a wall face at {factor:limit.surface} or more: wait for shade or a cooler time of day. Cleaner that is on the wall is still rinsed off.',
    when: 'too hot',
    stop: true,
    ...published('guide-section-brick'),
  },
  {
    id: 'wind',
    topic: 'weather',
    text: 'Spray no cleaner in more than {factor:limit.wind} of wind: apply it with a brush, screen the work, or wait.',
    when: 'cleaner',
    ...ours,
  },
  {
    id: 'too-windy',
    topic: 'weather',
    text: 'Do not spray cleaner: there is more wind than {factor:limit.wind}. Apply it with a brush, screen the work, or wait.',
    when: 'too windy',
    stop: true,
    ...ours,
  },
  {
    id: 'dries-early',
    topic: 'weather',
    text: 'The cleaner dries before its maximum dwell is over: mist it before it does, or wash smaller areas, in shade, or at a cooler time of day.',
    when: 'dries early',
    ...advice,
  },
  {
    id: 'dries-too-soon',
    topic: 'weather',
    text: 'Without misting the cleaner is dry before even its minimum dwell is over: apply none without water at hand, {factor:weather.mist} each time, and rinse where it starts to dry.',
    when: 'dries too soon',
    ...advice,
  },
];
