import { show, take, type Kind } from '../../src/quantity/systems';
import { constants } from '../../src/rules/constants';
import type { FactorsInForce } from '../../src/rules/read-factors';

/**
 * Whether each label stands once, found out with nothing but a set.
 * @param walls a headed range, the labels in its first column
 * @returns true where none repeats
 */
export function labelsDiffer(walls: readonly (readonly unknown[])[]): boolean {
  const count = walls.length;
  const seen = new Set<unknown>();
  for (let index = 1; index < count; index++) seen.add(walls[index]?.[0]);
  return seen.size === count - 1;
}

/** What a zone comes to, in US units, by the headings of SCHEDULE. */
export type ZoneTotals = Readonly<Record<string, number>>;

const LEVELS = 16;
const GUARD = 1e-9;
const STRONGEST = 3;

/** What is added up for a zone. A class, so that its fields are numbers from the start. */
class ZoneSums {
  readonly lengths = new Float64Array(LEVELS);
  ceiling = STRONGEST;
  need = 0;
  sorptivity = 0;
  class = 0;
  contact = 0;
  passRunoff = 0;
  dilution = 0;
  acidInLitre = 0;
  washedArea = 0;
  absorbed = 0;
  preWet = 0;
  rinse = 0;
  mix = 0;
  concentrate = 0;
  bicarbonate = 0;
  sodaAsh = 0;
  masking = 0;
  perimeter = 0;
  maskHours = 0;
  scrapeHours = 0;
  scrubHours = 0;
}

/**
 * The model as two bare loops over the cells: no validation, no trace, no object a row. It takes US units, words spelled
 * as in the tables and labels that are unique for granted.
 * @param walls a headed range, its headings spelled as ours
 * @param factors the factors in force
 * @returns the totals of each zone, by its name
 */
export function bareLoop(
  walls: readonly (readonly unknown[])[],
  factors: FactorsInForce,
): Map<string, ZoneTotals> {
  const header = walls[0] ?? [];
  const place = (heading: string): number => header.indexOf(heading);
  const zoneAt = place('Zone');
  const levelAt = place('Level');
  const materialAt = place('Material');
  const areaAt = place('Area');
  const heightAt = place('Height');
  const openingsAt = place('Openings');
  const perimeterAt = place('Opening perimeter');
  const fixturesAt = place('Fixtures');
  const mortarAt = place('Mortar');
  const residueAt = place('Residue');
  const brushedAt = place('Brushed');
  const maskedAt = place('Masked');
  const suctionAt = place('Suction');
  const { value } = factors;
  const foot = take(1, 'length', 'US');
  const squareFoot = take(1, 'area', 'US');
  const gramsOnBrick = take(1, 'suction', 'US');
  const ceilings = new Map(factors.materials.map(({ name, ceiling }) => [name, ceiling as number]));
  const suctions = new Map(factors.materials.map(({ name, suction }) => [name, suction]));
  const needLight = value('need.light');
  const needModerate = value('need.moderate');
  const needHeavy = value('need.heavy');
  const needStrong = value('need.strongMortar');
  const density = value('water.density');
  const zones = new Map<string, ZoneSums>();
  const count = walls.length;

  for (let index = 1; index < count; index++) {
    const row = walls[index] as readonly unknown[];
    const name = row[zoneAt] as string;
    let zone = zones.get(name);
    if (zone === undefined) zones.set(name, (zone = new ZoneSums()));
    const height = (row[heightAt] as number) * foot;
    if (height > 0) {
      const level = row[levelAt] as number;
      zone.lengths[level] = (zone.lengths[level] ?? 0) + ((row[areaAt] as number) * squareFoot) / height;
    }
    if (row[maskedAt] === 'yes') continue;
    const ceiling = ceilings.get(row[materialAt] as string) as number;
    if (ceiling < zone.ceiling) zone.ceiling = ceiling;
    const residue = row[residueAt];
    const mortar = row[mortarAt];
    let need = needModerate;
    if (residue === 'heavy') need = needHeavy;
    else if (residue === 'light' || (residue === '' && row[brushedAt] === 'yes')) need = needLight;
    if (mortar === 'S' || mortar === 'M') need += needStrong;
    if (need > STRONGEST) need = STRONGEST;
    if (need > zone.need) zone.need = need;
    const measured = row[suctionAt];
    const sorptivity =
      ((measured as number) > 0
        ? (measured as number) * gramsOnBrick
        : (suctions.get(row[materialAt] as string) as number)) / density;
    if (sorptivity > zone.sorptivity) zone.sorptivity = sorptivity;
  }

  const dwell = value('dwell.most');
  for (const zone of zones.values()) {
    const classToUse = Math.min(zone.ceiling, zone.need);
    zone.class = classToUse;
    if (classToUse === 0) continue;
    const ratio = value('prewet.residualUptake') / density / zone.sorptivity;
    const minutes = zone.sorptivity === 0 ? 0 : (Math.max(0, dwell - ratio ** 2) / (2 * ratio)) ** 2;
    const passes = Math.max(
      value('prewet.leastPasses'),
      Math.ceil(minutes / value('prewet.passContact') - GUARD),
    );
    zone.contact = passes * value('prewet.passContact');
    zone.passRunoff = passes * value('prewet.runoffPerPass');
    zone.dilution = value(`cleaner.dilution.${classToUse as 1 | 2 | 3}`);
    if (classToUse < 2) continue;
    const acid = classToUse as 2 | 3;
    zone.acidInLitre =
      (value(`acid.${acid}.density`) * value(`acid.${acid}.fraction`)) / constants.molarMassHCl.value;
  }

  const flow =
    value('nozzle.number') *
    constants.ratedFlow.value *
    Math.sqrt(value('nozzle.pressure') / constants.ratedPressure.value);
  const rinsePerArea = (flow / value('rate.rinse')) * value('rinse.count');
  const coverage = value('cleaner.coverage');
  const coats = value('cleaner.applications');
  const sodaShare = value('neutralizer.sodaAsh');
  const bicarbonatePerAcid = (1 - sodaShare) * constants.molarMassNaHCO3.value;
  const sodaAshPerAcid = (sodaShare / 2) * constants.molarMassNa2CO3.value;
  const lap = value('mask.lap');
  const fixtureFilm = value('fixture.film');
  const maskOn = value('rate.maskOn');
  const cover = value('fixture.cover');
  const scrapeLight = value('rate.scrape.light');
  const scrapeModerate = value('rate.scrape.moderate');
  const scrapeHeavy = value('rate.scrape.heavy');
  const effortOf = (type: 'M' | 'S' | 'O'): number =>
    (value(`mortar.${type}.strength`) / value('mortar.N.strength')) ** value('mortar.effortExponent');
  const effortM = effortOf('M');
  const effortS = effortOf('S');
  const effortO = effortOf('O');
  const scrubRate = value('rate.scrub');

  for (let index = 1; index < count; index++) {
    const row = walls[index] as readonly unknown[];
    const zone = zones.get(row[zoneAt] as string) as ZoneSums;
    const masked = row[maskedAt] === 'yes';
    const gross = (row[areaAt] as number) * squareFoot;
    let surface = (row[openingsAt] as number) * squareFoot;
    const area = gross - surface;
    let perimeter = (row[perimeterAt] as number) * foot;
    let fixtures = row[fixturesAt] as number;
    if (masked) {
      const height = (row[heightAt] as number) * foot;
      surface = gross;
      perimeter = height > 0 ? 2 * (gross / height + height) : 4 * Math.sqrt(gross);
      fixtures = 0;
    }
    const lapped = surface + perimeter * lap;
    zone.masking += lapped + fixtures * fixtureFilm;
    zone.perimeter += perimeter;
    zone.maskHours += lapped / maskOn + (fixtures * cover) / 60;
    if (masked) continue;
    const measured = row[suctionAt];
    const suction =
      (measured as number) > 0
        ? (measured as number) * gramsOnBrick
        : (suctions.get(row[materialAt] as string) as number);
    const absorbed = ((area * suction) / density) * Math.sqrt(zone.contact);
    const mix = zone.class === 0 ? 0 : (area / coverage) * coats;
    const concentrate = mix / (1 + zone.dilution);
    const acid = concentrate * zone.acidInLitre;
    zone.washedArea += area;
    zone.absorbed += absorbed;
    zone.preWet += absorbed + area * zone.passRunoff;
    zone.rinse += area * rinsePerArea;
    zone.mix += mix;
    zone.concentrate += concentrate;
    zone.bicarbonate += acid * bicarbonatePerAcid;
    zone.sodaAsh += acid * sodaAshPerAcid;
    const residue = row[residueAt];
    const mortar = row[mortarAt];
    let need = needModerate;
    let rate = scrapeModerate;
    if (residue === 'heavy') {
      need = needHeavy;
      rate = scrapeHeavy;
    } else if (residue === 'light' || (residue === '' && row[brushedAt] === 'yes')) {
      need = needLight;
      rate = scrapeLight;
    }
    let effort = 1;
    if (mortar === 'S') {
      need += needStrong;
      effort = effortS;
    } else if (mortar === 'M') {
      need += needStrong;
      effort = effortM;
    } else if (mortar === 'O') effort = effortO;
    if (need > STRONGEST) need = STRONGEST;
    zone.scrapeHours += (area / rate) * effort;
    if (need > zone.class) zone.scrubHours += (area / scrubRate) * (need - zone.class);
  }
  return new Map([...zones].map(([name, zone]) => [name, totalsOf(zone, factors)]));
}

/** What follows from the sums of a zone: the hours of washing, and the price. */
function totalsOf(zone: ZoneSums, { value }: FactorsInForce): ZoneTotals {
  const crew = value('crew');
  const coats = value('cleaner.applications');
  const apply = value('rate.apply');
  const rinse = value('rate.rinse');
  const rinses = value('rinse.count');
  const rising = (temperature: number): number => Math.max(0, temperature + 18) ** 2.5;
  const evaporation =
    5e-6 *
    Math.max(0, rising(value('weather.surface')) - value('weather.humidity') * rising(value('weather.air'))) *
    (value('weather.wind') + 4);
  const dries = ((value('weather.film') * value('water.density')) / evaporation) * 60;
  const least = value('dwell.least');
  const most = Math.min(value('dwell.most'), dries);
  const slow = Math.min(apply, rinse);
  const fast = Math.max(apply, rinse);
  const patch = Math.min(most * slow, (most - least) / (1 / slow - 1 / fast));
  const wait = Math.max(0, least - patch / fast);
  const washes = zone.class > 0;
  const patches = washes ? Math.ceil(zone.washedArea / patch - GUARD) : 0;
  const preWetHours = (patches * zone.contact * crew) / 60;
  const applyMinutes =
    patches * ((patch / apply) * coats + wait) - Math.max(0, patches - 1) * Math.min(zone.contact, wait);
  const applyHours = washes ? (applyMinutes * crew) / 60 : 0;
  const rinseHours = ((washes ? patches * patch : zone.washedArea) / rinse) * rinses * (crew / 60);
  const unmaskHours = zone.masking / value('rate.maskOff');
  const moveHours =
    (Math.ceil(Math.max(...zone.lengths) / value('access.dropWidth') - GUARD) * value('access.move') * crew) /
    60;
  const other =
    zone.scrapeHours +
    zone.maskHours +
    preWetHours +
    applyHours +
    zone.scrubHours +
    rinseHours +
    unmaskHours +
    moveHours;
  const perDay = value('setup.perDay');
  const days = other / (crew * (value('shift') - perDay));
  const setupHours = days * perDay * crew;
  const crewHours = other + setupHours;
  const mixWater = zone.mix - zone.concentrate;
  const water = zone.preWet + mixWater + zone.rinse;
  const runoff = (water + zone.concentrate - zone.absorbed) * value('runoff.captured');
  const film = zone.masking * (1 + value('film.waste'));
  const tape = zone.perimeter * (1 + value('tape.waste'));
  const cleanerPrice = washes ? value(`price.cleaner.${zone.class as 1 | 2 | 3}`) : 0;
  const parts = {
    'Labour price': crewHours * value('price.labour'),
    'Cleaner price': zone.concentrate * cleanerPrice,
    'Masking price': film * value('price.film') + tape * value('price.tape'),
    'Water price': water * value('price.water'),
    'Equipment price': days * value('price.equipment'),
    'Access price': days * value('price.access'),
    'Neutralizer price':
      zone.bicarbonate * value('price.bicarbonate') + zone.sodaAsh * value('price.sodaAsh'),
    'Disposal price': runoff * value('price.disposal'),
  };
  const direct = Object.values(parts).reduce((sum, part) => sum + part, 0);
  const contingency = direct * value('price.contingency');
  const overhead = (direct + contingency) * value('price.overhead');
  const profit = (direct + contingency + overhead) * value('price.profit');
  const shown = (of: number, kind: Kind): number => show(of, kind, 'US');
  return {
    Class: zone.class,
    'Washed area': shown(zone.washedArea, 'area'),
    Water: shown(water, 'volume'),
    'Pre-wet water': shown(zone.preWet, 'volume'),
    'Mix water': shown(mixWater, 'volume'),
    'Rinse water': shown(zone.rinse, 'volume'),
    'Water taken up': shown(zone.absorbed, 'volume'),
    'Mixed cleaner': shown(zone.mix, 'volume'),
    Concentrate: shown(zone.concentrate, 'volume'),
    Runoff: shown(runoff, 'volume'),
    Neutralizer: shown(zone.bicarbonate + zone.sodaAsh, 'mass'),
    'Sodium bicarbonate': shown(zone.bicarbonate, 'mass'),
    'Soda ash': shown(zone.sodaAsh, 'mass'),
    Masking: shown(zone.masking, 'area'),
    'Film to buy': shown(film, 'area'),
    Tape: shown(tape, 'length'),
    'Crew-hours': crewHours,
    'Scrape hours': zone.scrapeHours,
    'Mask hours': zone.maskHours,
    'Pre-wet hours': preWetHours,
    'Apply hours': applyHours,
    'Scrub hours': zone.scrubHours,
    'Rinse hours': rinseHours,
    'Unmask hours': unmaskHours,
    'Move hours': moveHours,
    'Set-up hours': setupHours,
    Days: days,
    Price: direct + contingency + overhead + profit,
    ...parts,
    Contingency: contingency,
    Overhead: overhead,
    Profit: profit,
  };
}
