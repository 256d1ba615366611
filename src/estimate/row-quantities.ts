import { effortsOf, type Efforts } from '../govern/effort';
import type { CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder, RowRecord } from '../trace/recorder';
import { netArea } from '../walls/net-area';
import type { WallRow } from '../walls/wall-row';
import { stripBelow } from './below';
import { brushHours } from './brush-down';
import { cleanerMix, cleanerUse, concentrate, mixWater, type CleanerUse } from './cleaner';
import { crewOf, hoursOf, type Crew } from './crew';
import type { Elevation } from './elevation';
import { glassHours } from './glass';
import { maskingAllowances, masking, type MaskingAllowances } from './masking';
import { maskOffHours, maskOnHours, maskRates, type MaskRates } from './mask-hours';
import { acidUse, neutralizer, type AcidUse } from './neutralizer';
import { accessRules, moveHours, type AccessRules } from './positions';
import { washHours, type Quantities } from './quantities';
import { cleanerPrice, pricesOf, type Prices } from './price';
import { runoff } from './runoff';
import { scaffoldHours, scaffoldRules, type ScaffoldRules } from './scaffold';
import { scrapeHours, scrapeRates, type ScrapeRates } from './scrape';
import { slowdownOf, slowdownsOf, type Slowdowns } from './slowdown';
import { washRow, type RowWash, type WashRules } from './wash-row';
import { washRules } from './wash-rules';
import type { Wash, ZoneDecision } from './washes';

/** What holds for every row of a job. */
export interface JobRules {
  readonly crew: Crew;
  readonly masking: MaskingAllowances;
  readonly maskRates: MaskRates;
  readonly scrape: { readonly rates: ScrapeRates; readonly efforts: Efforts };
  readonly access: AccessRules;
  readonly scaffold: ScaffoldRules;
  readonly slowdowns: Slowdowns;
  /** m2 per labor-hour */
  readonly glassRate: number;
  readonly brushRate: number;
  /** Share of the wash that is done once more, 0 to 1. */
  readonly again: number;
  /** Share of the runoff that is collected, 0 to 1. */
  readonly captured: number;
  readonly prices: Prices;
  readonly ofClass: (classToUse: CleanerClass) => ClassRules;
}

/** What holds for every row that is washed with one class. */
export interface ClassRules {
  readonly wash: WashRules;
  /** Undefined for clear water. */
  readonly cleaner: CleanerUse | undefined;
  /** Undefined where the class is no acid. */
  readonly acid: AcidUse | undefined;
}

/**
 * What holds for every row of a job.
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns rates, allowances and rules
 */
export function jobRules(factors: FactorsInForce, rec?: Recorder): JobRules {
  const rulesOf = washRules(factors, rec);
  const known = new Map<CleanerClass, ClassRules>();
  return {
    crew: crewOf(factors),
    masking: maskingAllowances(factors),
    maskRates: maskRates(factors),
    scrape: { rates: scrapeRates(factors), efforts: effortsOf(factors) },
    access: accessRules(factors),
    scaffold: scaffoldRules(factors),
    slowdowns: slowdownsOf(factors),
    glassRate: factors.value('rate.glass'),
    brushRate: factors.value('rate.brush'),
    again: factors.value('reclean.share'),
    captured: factors.value('runoff.captured'),
    prices: pricesOf(factors),
    ofClass: (classToUse) => {
      const rules = known.get(classToUse) ?? {
        wash: rulesOf(classToUse),
        cleaner: cleanerUse(classToUse, factors),
        acid: acidUse(classToUse, factors),
      };
      known.set(classToUse, rules);
      return rules;
    },
  };
}

/**
 * Adds what a row has whether it is washed or not: masking, glass, scaffold, brushing down.
 * @param row the wall row
 * @param elevation how its zone stands
 * @param rules what holds for the job
 * @param sums takes the values, in base units
 * @param rec takes down the lines
 */
export function addFaceQuantities(
  row: WallRow,
  elevation: Elevation,
  rules: JobRules,
  sums: Quantities,
  rec?: RowRecord,
): void {
  const { crew } = rules;
  if (rec) {
    rec.input('Area#', row.area, 'area', 'Area of the row, gross', 'area');
    rec.input('Openings#', row.openings, 'area', 'Openings in the row', 'openings');
  }
  const slowed = slowdownOf(row, rules.slowdowns, rec);
  const mask = masking(row, rules.masking, rec);
  sums.maskingArea += mask.area;
  sums.film += mask.film;
  sums.tape += mask.tape;
  sums.maskHours += maskOnHours(mask, rules.maskRates, slowed.masking, crew, rec);
  sums.unmaskHours += maskOffHours(mask, rules.maskRates, slowed.masking, crew, rec);
  sums.glassHours += glassHours(row, rules.glassRate, crew, rec);
  sums.scaffoldHours += scaffoldHours(row, elevation, rules.scaffold, rec);
  sums.brushHours += brushHours(row, rules.brushRate, crew, rec);
}

/** The parts of the wash that come per area, by the quantity that each adds to. */
const partOf = {
  prewetHours: 'prewet',
  applyHours: 'apply',
  scrubHours: 'scrub',
  rinseHours: 'rinse',
  tendHours: 'tend',
  changeHours: 'change',
  belowHours: 'below',
} as const satisfies Record<(typeof washHours)[number], keyof RowWash>;

/**
 * Adds what washing a row takes: scraping, the wash, moves, water, cleaner, and what is done once more.
 * @param row the wall row
 * @param wash the wash that it is part of
 * @param elevation levels and heights of its zone
 * @param decision how its zone is washed
 * @param rules what holds for the job
 * @param sums takes the values, in base units
 * @param rec takes down the lines
 * @returns how the row is washed
 */
export function addWashQuantities(
  row: WallRow,
  wash: Wash,
  elevation: Elevation,
  decision: Pick<ZoneDecision, 'masonry' | 'how'>,
  rules: JobRules,
  sums: Quantities,
  rec?: RowRecord,
): RowWash {
  const { crew, again } = rules;
  const ofClass = rules.ofClass(wash.class);
  const area = netArea(row);
  const isMasonry = row.material.masonry;
  const washed = isMasonry ? area : 0;
  rec?.line('bareArea', area);
  rec?.lineNamed(
    'washedArea#',
    isMasonry ? 'bareArea#' : '0',
    washed,
    'area',
    isMasonry ? 'washedArea' : 'onlyProtected',
  );
  const slowed = slowdownOf(row, rules.slowdowns, rec).washing;
  const how = decision.how(row, wash.class);
  if (rec) {
    const strip = stripBelow(row, elevation, decision.masonry, ofClass.wash.below, rec);
    washRow(row, strip, ofClass.wash, rec);
  }
  sums.washedArea += washed;

  // Spelled out: the engine is slow to go through quantities by name, and this is done for each row.
  const hours = (work: number): number => hoursOf(work * area * slowed, crew);
  const prewet = hours(how.prewet);
  const apply = hours(how.apply);
  const scrub = hours(how.scrub);
  const rinse = hours(how.rinse);
  const tend = hours(how.tend);
  const change = hours(how.change);
  const beneath = hours(how.below);
  sums.prewetHours += prewet;
  sums.applyHours += apply;
  sums.scrubHours += scrub;
  sums.rinseHours += rinse;
  sums.tendHours += tend;
  sums.changeHours += change;
  sums.belowHours += beneath;
  const cleanedAgain = (prewet + apply + scrub + rinse + tend + change + beneath) * again;
  sums.recleanHours += cleanedAgain;
  if (rec) {
    for (const id of washHours) {
      const part = partOf[id];
      const expression = `bareArea# * ${part}Work# * slowed# / minPerHour / working_share`;
      rec.lineNamed(`${id}#`, expression, hours(how[part]), 'laborHours', 'washPart');
    }
    rec.line('reclean', cleanedAgain, { parts: washHours.map((id) => `${id}#`).join(' + ') });
  }
  if (isMasonry) sums.scrapeHours += scrapeHours(row, area, slowed, rules.scrape, crew, rec);
  else rec?.nothing('scrapeHours#', 'laborHours', 'onlyProtected');
  sums.moveHours += moveHours(row, area, elevation, rules.access, crew, rec);

  const preWetted = how.wet.water * area;
  const below = how.belowWater * area;
  const mist = how.mistWater * area;
  const rinsed = how.rinseWater * area;
  const mix = cleanerMix(washed, how.passes, again, ofClass.cleaner, rec);
  const cleaner = concentrate(mix, ofClass.cleaner, rec);
  const mixed = mixWater(mix, cleaner, rec);
  const oncemore = (preWetted + below + mist + rinsed) * again;
  const water = preWetted + below + mist + mixed + rinsed + oncemore;
  const absorbed = how.wet.absorbed * area * (1 + again);
  if (rec) {
    rec.line('preWetWater', preWetted);
    rec.line('belowWater', below);
    rec.line('mistWater', mist);
    rec.line('rinseWater', rinsed);
    rec.line('recleanWater', oncemore);
    rec.line('water', water);
    rec.line('absorbedWater', absorbed);
  }
  sums.preWetWater += preWetted;
  sums.belowWater += below;
  sums.mistWater += mist;
  sums.rinseWater += rinsed;
  sums.recleanWater += oncemore;
  sums.mix += mix;
  sums.concentrate += cleaner;
  sums.priceCleaner += cleanerPrice(cleaner, wash.class, rules.prices, rec);
  sums.mixWater += mixed;
  sums.water += water;
  sums.absorbed += absorbed;
  sums.runoff += runoff(water, cleaner, absorbed, rules.captured, rec);
  const alkali = neutralizer(cleaner, ofClass.acid, rec);
  const neutralizing = alkali.bicarbonate + alkali.sodaAsh;
  sums.bicarbonate += alkali.bicarbonate;
  sums.sodaAsh += alkali.sodaAsh;
  sums.neutralizer += neutralizing;
  rec?.line('neutralizer', neutralizing);
  return how;
}

/** The quantities of washing, for a row that is not washed. */
export const ofWashing = [
  ...washHours,
  'washedArea',
  'scrapeHours',
  'moveHours',
  'recleanHours',
  'water',
  'preWetWater',
  'belowWater',
  'mistWater',
  'mixWater',
  'rinseWater',
  'recleanWater',
  'absorbed',
  'mix',
  'concentrate',
  'runoff',
  'neutralizer',
  'bicarbonate',
  'sodaAsh',
  'priceCleaner',
] as const satisfies readonly (keyof Quantities)[];
