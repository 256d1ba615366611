import { show, take, type Kind } from '../../src/quantity/systems';
import { constants } from '../../src/rules/constants';
import type { FactorId } from '../../src/rules/factors';
import type { FactorsInForce, MaterialInForce } from '../../src/rules/read-factors';

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
const CLASSES = STRONGEST + 1;
/** Every choice of cleaners for the masked masonry, a bit each; few cleaners first, then gentle ones. */
const CHOICES = [1, 2, 4, 8, 3, 5, 6, 9, 10, 12, 7, 11, 13, 14, 15];

/** What a zone comes to. A class, so that fields are numbers from the start. */
class ZoneSums {
  readonly heights = new Float64Array(LEVELS);
  readonly feet = new Float64Array(LEVELS);
  readonly masonry = new Float64Array(LEVELS);
  readonly strips = new Float64Array(LEVELS);
  /** Minutes of the bare rows with each class, and of the masked ones with each choice of cleaners. */
  readonly minutes = new Float64Array(CLASSES);
  readonly laterMinutes = new Float64Array(1 << CLASSES);
  bareRows = 0;
  ceiling = STRONGEST;
  class = 0;
  /** Cleaners of the washes afterwards, a bit each: those chosen, and those that a row takes. */
  chosen = 0;
  used = 0;
  washedArea = 0;
  absorbed = 0;
  preWet = 0;
  below = 0;
  mist = 0;
  rinse = 0;
  mix = 0;
  concentrate = 0;
  cleaner = 0;
  acid = 0;
  masking = 0;
  perimeter = 0;
  // Minutes of persons from here on.
  scrape = 0;
  mask = 0;
  prewetting = 0;
  applying = 0;
  scrubbing = 0;
  rinsing = 0;
  tending = 0;
  changing = 0;
  wettingBelow = 0;
  unmask = 0;
  glass = 0;
  moving = 0;
  brushing = 0;
  /** Hours of persons, breaks and all. */
  scaffold = 0;
}

/** What a face takes for each m2, filled in anew for each row and class: minutes of persons, and L/m2. */
class Face {
  passes = 0;
  prewet = 0;
  apply = 0;
  scrub = 0;
  rinse = 0;
  change = 0;
  below = 0;
  tend = 0;
  all = 0;
  absorbed = 0;
  preWetWater = 0;
  belowWater = 0;
}

/**
 * The model as three bare loops over the cells: how the zones stand, what each class takes, the sums. No validation, no
 * trace, no object a row. It takes for granted US units, words spelled as in the tables, unique labels and factors under
 * which each row has a class that can do it.
 * @param walls a headed range, its headings spelled as ours, its levels below 16
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
  const accessAt = place('Access');
  const suctionAt = place('Suction');
  const { value } = factors;
  const foot = take(1, 'length', 'US');
  const squareFoot = take(1, 'area', 'US');
  const gramsOnBrick = take(1, 'suction', 'US');
  const materials = new Map(factors.materials.map((material) => [material.name, material]));
  const lift = value('access.lift');
  const drop = value('access.dropWidth');
  const count = walls.length;
  const zones = new Map<string, ZoneSums>();
  const washed = new Set<MaterialInForce>();

  for (let index = 1; index < count; index++) {
    const row = walls[index] as readonly unknown[];
    const name = row[zoneAt] as string;
    let zone = zones.get(name);
    if (zone === undefined) zones.set(name, (zone = new ZoneSums()));
    const level = (row[levelAt] || 0) as number;
    const height = (row[heightAt] as number) * foot || lift;
    if (level > 0 && height > (zone.heights[level] as number)) zone.heights[level] = height;
    const net = ((row[areaAt] as number) - (row[openingsAt] as number)) * squareFoot;
    const material = materials.get(row[materialAt] as string) as MaterialInForce;
    const masked = row[maskedAt];
    if (net <= 0 || masked === 'only' || (masked === 'yes' && !material.masonry)) continue;
    if (masked !== 'yes') {
      zone.bareRows++;
      if (material.ceiling < zone.ceiling) zone.ceiling = material.ceiling;
    }
    if (!material.masonry) continue;
    zone.masonry[level] = (zone.masonry[level] as number) + net;
    washed.add(material);
  }

  for (const { heights, feet, masonry, strips } of zones.values()) {
    for (let level = LEVELS - 1; level > 1; level--) {
      feet[level - 1] = (feet[level] as number) + (heights[level] as number);
      strips[level - 1] =
        (strips[level] as number) + Math.min(drop * (heights[level] as number), masonry[level] as number);
    }
  }

  const density = value('water.density');
  const share = value('working.share');
  const effortOf = (type: 'M' | 'S' | 'N' | 'O'): number =>
    (value(`mortar.${type}.strength`) / value('mortar.N.strength')) ** value('mortar.effortExponent');
  const [effortM, effortS, effortN, effortO] = [effortOf('M'), effortOf('S'), effortOf('N'), effortOf('O')];
  const [loadLight, loadModerate, loadHeavy] = [
    value('load.light'),
    value('load.moderate'),
    value('load.heavy'),
  ];
  const slowOf = (kind: string): number => value(`access.factor.${kind}` as FactorId);
  const [slowGround, slowScaffold, slowLift] = [slowOf('ground'), slowOf('scaffold'), slowOf('lift')];
  const [slowLadder, slowSuspended] = [slowOf('ladder'), slowOf('suspended')];
  const slowOther = slowOf(factors.choice('access.kind'));
  const smooth = value('texture.factor.smooth');
  const rough = value('texture.factor.rough');
  const face = new Face();
  const fill = faceFiller(face, factors);
  const isLight = (row: readonly unknown[]): boolean =>
    row[residueAt] === 'light' || (row[residueAt] === '' && row[brushedAt] !== '' && row[brushedAt] !== 'no');
  const effort = (row: readonly unknown[]): number => {
    const mortar = row[mortarAt];
    return mortar === 'S' ? effortS : mortar === 'M' ? effortM : mortar === 'O' ? effortO : effortN;
  };
  const load = (row: readonly unknown[]): number =>
    row[residueAt] === 'heavy' ? loadHeavy : isLight(row) ? loadLight : loadModerate;
  const sorptivity = (row: readonly unknown[], material: MaterialInForce): number => {
    const measured = row[suctionAt] as number;
    return (measured > 0 ? measured * gramsOnBrick : material.suction) / density;
  };
  const reached = (row: readonly unknown[]): number => {
    const kind = row[accessAt];
    if (kind === '') return slowOther;
    if (kind === 'lift') return slowLift;
    if (kind === 'scaffold') return slowScaffold;
    return kind === 'ground' ? slowGround : kind === 'ladder' ? slowLadder : slowSuspended;
  };

  /** What each class takes of the masked rows, one row after the other. */
  const later: number[] = [];
  for (let index = 1; index < count; index++) {
    const row = walls[index] as readonly unknown[];
    const material = materials.get(row[materialAt] as string) as MaterialInForce;
    const net = ((row[areaAt] as number) - (row[openingsAt] as number)) * squareFoot;
    const masked = row[maskedAt];
    if (net <= 0 || masked === 'only' || !material.masonry) continue;
    const zone = zones.get(row[zoneAt] as string) as ZoneSums;
    const slow = net * reached(row) * (material.texture === 'rough' ? rough : smooth);
    const residue = load(row) * effort(row);
    const suction = sorptivity(row, material);
    const strip = zone.strips[(row[levelAt] || 0) as number] as number;
    if (masked !== 'yes') {
      const { minutes } = zone;
      for (let of = 0; of <= zone.ceiling; of++) {
        fill(of, suction, material.pressure, residue, strip);
        minutes[of] = (minutes[of] as number) + face.all * slow;
      }
      continue;
    }
    const from = later.length;
    for (let of = 0; of < CLASSES; of++) {
      if (of <= zone.ceiling && of <= material.ceiling) {
        fill(of, suction, material.pressure, residue, strip);
        later.push(face.all >= 0 ? face.all * slow : Infinity);
      } else later.push(Infinity);
    }
    const { laterMinutes } = zone;
    for (let choice = 1; choice < laterMinutes.length; choice++) {
      let best = Infinity;
      for (let of = 0; of < CLASSES; of++) {
        const minutes = later[from + of] as number;
        if ((choice >> of) % 2 === 1 && minutes < best) best = minutes;
      }
      laterMinutes[choice] = (laterMinutes[choice] as number) + best;
    }
  }

  const chosen = factors.chosenClass ?? CLASSES;
  const setup = (value('setup.zone') * 60 * share) / (1 + value('reclean.share'));
  for (const zone of zones.values()) {
    for (let of = 1; of <= zone.ceiling; of++) {
      const [least = NaN, minutes = NaN] = [zone.minutes[zone.class], zone.minutes[of]];
      if (Number.isNaN(least) || minutes < least * (1 - GUARD)) zone.class = of;
    }
    if (chosen < CLASSES) zone.class = Math.min(chosen, zone.ceiling);
    let least = Infinity;
    for (const choice of CHOICES) {
      const minutes = (zone.laterMinutes[choice] as number) + cleanersOf(choice) * setup;
      if (minutes < least * (1 - GUARD)) [least, zone.chosen] = [minutes, choice];
    }
  }
  let nextLater = 0;
  const laterClass = ({ ceiling, chosen: choice }: ZoneSums, material: MaterialInForce): number => {
    const from = nextLater;
    nextLater += CLASSES;
    if (chosen < CLASSES) return Math.min(chosen, ceiling, material.ceiling);
    let [best, least] = [0, Infinity];
    for (let of = 0; of < CLASSES; of++) {
      const minutes = later[from + of] as number;
      if ((choice >> of) % 2 === 1 && minutes < least * (1 - GUARD)) [best, least] = [of, minutes];
    }
    return best;
  };

  const lap = value('mask.lap');
  const fixtureFilm = value('fixture.film');
  const [maskOn, maskOff, glassRate, brushRate] = [
    value('rate.maskOn') / 60,
    value('rate.maskOff') / 60,
    value('rate.glass') / 60,
    value('rate.brush') / 60,
  ];
  const cover = value('fixture.cover');
  const [scrapeLight, scrapeModerate, scrapeHeavy] = [
    value('rate.scrape.light') / 60,
    value('rate.scrape.moderate') / 60,
    value('rate.scrape.heavy') / 60,
  ];
  const team = value('team.size');
  const flow =
    (value('nozzle.number') * constants.ratedFlow.value) / Math.sqrt(constants.ratedPressure.value);
  const pressure = value('nozzle.pressure');
  const rinsePerArea = value('rinse.perArea');
  const coverage = value('cleaner.coverage');
  const again = 1 + value('reclean.share');
  const shares = [0, 1, 2, 3].map((of) =>
    of === 0 ? 0 : 1 / (1 + value(`cleaner.dilution.${of as 1 | 2 | 3}`)),
  );
  const acids = [0, 1, 2, 3].map((of) =>
    of < 2
      ? 0
      : (value(`acid.${of as 2 | 3}.density`) * value(`acid.${of as 2 | 3}.fraction`)) /
        constants.molarMassHCl.value,
  );
  const prices = [0, 1, 2, 3].map((of) => (of === 0 ? 0 : value(`price.cleaner.${of as 1 | 2 | 3}`)));
  const mists = Math.max(0, value('dwell.most') / minutesToDry(factors) - 1) * value('weather.mist');
  const ground = value('access.ground');
  const groundMove = value('access.groundMove');
  const higherMove = value('access.move') - groundMove;
  const puttingUp = value('scaffold') === 1;
  const lowScaffold = value('scaffold.low');
  const [scaffoldLow, scaffoldHigh] = [value('rate.scaffold.low'), value('rate.scaffold.high')];
  const isScaffold = (row: readonly unknown[]): boolean =>
    row[accessAt] === 'scaffold' || (row[accessAt] === '' && factors.choice('access.kind') === 'scaffold');

  for (let index = 1; index < count; index++) {
    const row = walls[index] as readonly unknown[];
    const zone = zones.get(row[zoneAt] as string) as ZoneSums;
    const material = materials.get(row[materialAt] as string) as MaterialInForce;
    const masked = row[maskedAt];
    const isCovered = masked === 'yes' || masked === 'only';
    const isLater = masked === 'yes' && material.masonry;
    const gross = (row[areaAt] as number) * squareFoot;
    const openings = (row[openingsAt] as number) * squareFoot;
    const net = gross - openings;
    const stated = (row[heightAt] as number) * foot;
    const height = stated || lift;
    const slowness = reached(row);
    let surface = openings;
    let edge = (row[perimeterAt] as number) * foot || 4 * Math.sqrt(openings);
    let fixtures = row[fixturesAt] as number;
    if (isCovered) {
      surface = gross;
      if (!isLater) edge = fixtures = 0;
      edge += stated > 0 ? 2 * (gross / stated + stated) : 4 * Math.sqrt(gross);
    }
    const lapped = surface + edge * lap;
    const masking = lapped + fixtures * fixtureFilm;
    zone.masking += masking;
    zone.perimeter += edge;
    zone.mask += (lapped / maskOn + fixtures * cover) * slowness;
    zone.unmask += (masking / maskOff) * slowness;
    const level = (row[levelAt] || 0) as number;
    const top = (zone.feet[level] as number) + height;
    if (masked !== 'only') zone.glass += (material.group === 'glass' ? gross : openings) / glassRate;
    if (puttingUp && isScaffold(row)) {
      const high = Math.min(1, Math.max(0, top - lowScaffold) / height);
      zone.scaffold += (gross * (1 - high)) / scaffoldLow + (gross * high) / scaffoldHigh;
    }
    if (net <= 0 || masked === 'only' || (masked === 'yes' && !material.masonry)) continue;
    const above = Math.min(1, Math.max(0, top - ground) / height);
    zone.moving += (net / (drop * lift)) * (groundMove + higherMove * above) * team;
    const slow = net * slowness * (material.texture === 'rough' ? rough : smooth);
    if (!material.masonry) {
      const rinse = rinsePerArea / (flow * Math.sqrt(Math.min(pressure, material.pressure)));
      zone.rinsing += rinse * slow;
      zone.tending += (team - 1) * rinse * slow;
      zone.rinse += rinsePerArea * net;
      continue;
    }
    let of = zone.class;
    if (isLater) {
      of = laterClass(zone, material);
      zone.used |= 1 << of;
    }
    const hardness = effort(row);
    const strip = zone.strips[level] as number;
    fill(of, sorptivity(row, material), material.pressure, load(row) * hardness, strip);
    const { passes } = face;
    zone.washedArea += net;
    zone.prewetting += face.prewet * slow;
    zone.applying += face.apply * slow;
    zone.scrubbing += face.scrub * slow;
    zone.rinsing += face.rinse * slow;
    zone.changing += face.change * slow;
    zone.wettingBelow += face.below * slow;
    zone.tending += face.tend * slow;
    const rate = row[residueAt] === 'heavy' ? scrapeHeavy : isLight(row) ? scrapeLight : scrapeModerate;
    zone.scrape += (slow / rate) * hardness;
    if (row[brushedAt] === 'priced') zone.brushing += net / brushRate;
    zone.absorbed += face.absorbed * net;
    zone.preWet += face.preWetWater * net;
    zone.below += face.belowWater * net;
    zone.rinse += rinsePerArea * passes * net;
    if (of === 0) continue;
    const mix = (net / coverage) * passes * again;
    const concentrate = mix * (shares[of] as number);
    zone.mist += mists * passes * net;
    zone.mix += mix;
    zone.concentrate += concentrate;
    zone.cleaner += concentrate * (prices[of] as number);
    zone.acid += concentrate * (acids[of] as number);
  }
  return jobTotals(zones, washed.size, share, factors);
}

/** Works out a face of masonry. Sorptivity in L/(m2 min^0.5), pressure in base units, residue against heavy, strip in m2. */
function faceFiller(
  face: Face,
  { value }: FactorsInForce,
): (of: number, suction: number, limit: number, residue: number, strip: number) => void {
  const team = value('team.size');
  const pressure = value('nozzle.pressure');
  const flow =
    (value('nozzle.number') * constants.ratedFlow.value) / Math.sqrt(constants.ratedPressure.value);
  const rinsePerArea = value('rinse.perArea');
  const left = [value('left.0'), value('left.1'), value('left.2'), value('left.3')];
  const scrubLeast = value('scrub.least');
  const scrubFull = value('scrub.full') / 60;
  const apply = 1 / value('rate.apply');
  const least = value('dwell.least');
  const most = value('dwell.most');
  const patchLeast = value('patch.least');
  const patchMost = value('patch.most');
  const patchChange = value('patch.change');
  const applications = value('cleaner.applications');
  const mostApplications = value('cleaner.mostApplications');
  const film = 1 / value('cleaner.coverage') - value('weather.film');
  const fieldShare = value('prewet.fieldShare');
  const capacity = value('prewet.capacity');
  const contact = value('prewet.passContact');
  const leastPasses = value('prewet.leastPasses');
  const mostPasses = value('prewet.mostPasses');
  const perPass = value('prewet.runoffPerPass');
  const wet = 1 / value('rate.wet');
  const interval = value('below.interval');
  const belowWater = value('below.water');
  const belowRate = value('rate.below');
  return (of, suction, limit, residue, strip) => {
    const rinse = rinsePerArea / (flow * Math.sqrt(Math.min(pressure, limit)));
    const brushing = Math.max(scrubLeast, (left[of] as number) * residue) / scrubFull;
    const scrub = brushing / team;
    let passes = 1;
    let cycle = rinse;
    let held = 0;
    let change = 0;
    let prewet = 0;
    face.absorbed = 0;
    face.preWetWater = 0;
    if (of > 0) {
      const slower = Math.max(apply, rinse);
      const atLeast = most / patchLeast - slower;
      passes = Math.max(applications, 1, scrub / atLeast);
      const each = scrub / passes;
      const patch = Math.min(most / (slower + each), patchMost);
      const quicker = Math.max(Math.min(apply, rinse), slower - (most - least) / patch);
      const wait = Math.max(0, least - patch * (quicker + each));
      cycle = passes * (slower + quicker + wait / patch);
      held = passes * (quicker - Math.min(apply, rinse) + wait / patch);
      change = (passes * patchChange) / patch;
      if (atLeast <= 0 || passes > mostApplications) cycle = NaN;
      const S = suction * fieldShare;
      const full = (capacity / S) ** 2;
      let ready = 0;
      if (S > 0 && film <= 0) ready = full;
      else if (S > 0 && least > (film / S) ** 2)
        ready = Math.min(full, ((least - (film / S) ** 2) / ((2 * film) / S)) ** 2);
      const wettings = Math.min(mostPasses, Math.max(leastPasses, Math.ceil(ready / contact - GUARD)));
      face.absorbed = Math.min(capacity, S * Math.sqrt(wettings * contact));
      face.preWetWater = face.absorbed + wettings * perPass;
      prewet = wettings * wet;
    }
    const free = (team - 1) * cycle;
    const before = cycle + change + scrub + Math.max(0, prewet - free) / team;
    const wettedBelow = (before / interval) * strip;
    const below = wettedBelow / belowRate;
    const time = cycle + change + scrub + Math.max(0, prewet + below - free) / team;
    face.passes = passes;
    face.prewet = prewet;
    face.apply = of > 0 ? passes * apply : 0;
    face.scrub = brushing;
    face.rinse = passes * rinse;
    face.change = change * team;
    face.below = below;
    face.tend = Math.max(0, free - prewet - below) + held;
    face.belowWater = wettedBelow * belowWater;
    face.all = time * team;
  };
}

/** How many cleaners a choice is of. */
function cleanersOf(choice: number): number {
  let count = 0;
  for (let of = 0; of < CLASSES; of++) count += (choice >> of) % 2;
  return count;
}

function minutesToDry({ value }: FactorsInForce): number {
  const rising = (temperature: number): number => Math.max(0, temperature + 18) ** 2.5;
  const evaporation =
    5e-6 *
    Math.max(0, rising(value('weather.surface')) - value('weather.humidity') * rising(value('weather.air'))) *
    (value('weather.wind') + 4);
  return ((value('weather.film') * value('water.density')) / evaporation) * 60;
}

/** What follows from the sums: hours, what belongs to the job, and the price. */
function jobTotals(
  zones: ReadonlyMap<string, ZoneSums>,
  materials: number,
  share: number,
  { value, overridden }: FactorsInForce,
): Map<string, ZoneTotals> {
  const again = value('reclean.share');
  const persons = value('team.size') * value('teams');
  const perDay = value('setup.perDay');
  const hour = 60 * share;
  const washHoursOf = (zone: ZoneSums): number =>
    (zone.prewetting +
      zone.applying +
      zone.scrubbing +
      zone.rinsing +
      zone.tending +
      zone.changing +
      zone.wettingBelow) /
    hour;
  const zoneSetup = (zone: ZoneSums): number =>
    value('setup.zone') * (cleanersOf(zone.used) + (zone.bareRows > 0 ? 1 : 0));
  const own = new Map<string, number>();
  for (const [name, zone] of zones) {
    const others = (zone.scrape + zone.mask + zone.unmask + zone.glass + zone.moving + zone.brushing) / hour;
    own.set(name, others + zone.scaffold + washHoursOf(zone) * (1 + again) + zoneSetup(zone));
  }
  const allOwn = [...own.values()].reduce((sum, hours) => sum + hours, 0);
  const ofJob = {
    sample: materials * value('sample.hours'),
    mobilize: value('mobilize.hours'),
    protect: value('protect.hours'),
  };
  const jobHours = ofJob.sample + ofJob.mobilize + ofJob.protect;
  const dayHours = persons * (value('shift') - perDay);
  const allDays = (allOwn + jobHours) / dayHours;
  const hire = Math.max(value('hire.least'), Math.ceil(allDays - GUARD)) * value('teams');
  const laborPrice = overridden('price.crew') ? value('price.crew') / persons : value('price.labor');
  const totals = new Map<string, Record<string, number>>();
  const shown = (of: number, kind: Kind): number => show(of, kind, 'US');
  let jobPrice = 0;
  for (const [name, zone] of zones) {
    const part = (own.get(name) as number) / allOwn;
    const before = (own.get(name) as number) + jobHours * part;
    const days = before / dayHours;
    const setup = days * perDay * persons;
    const labor = before + setup;
    const once = zone.preWet + zone.below + zone.mist + zone.rinse;
    const mixWater = zone.mix - zone.concentrate;
    const water = once * (1 + again) + mixWater;
    const absorbed = zone.absorbed * (1 + again);
    const captured = value('runoff.captured');
    const runoff = (water + zone.concentrate - absorbed) * captured;
    const soda = value('neutralizer.sodaAsh');
    const bicarbonate = zone.acid * captured * (1 - soda) * constants.molarMassNaHCO3.value;
    const sodaAsh = ((zone.acid * captured * soda) / 2) * constants.molarMassNa2CO3.value;
    const film = zone.masking * (1 + value('film.waste'));
    const tape = zone.perimeter * (1 + value('tape.waste'));
    const direct = {
      'Labor price': labor * laborPrice,
      'Cleaner price': zone.cleaner,
      'Masking price': film * value('price.film') + tape * value('price.tape'),
      'Water price': water * value('price.water'),
      'Equipment price': hire * part * value('price.equipment'),
      'Access price': hire * part * value('price.access'),
      'Neutralizer price': bicarbonate * value('price.bicarbonate') + sodaAsh * value('price.sodaAsh'),
      'Disposal price': runoff * value('price.disposal'),
      'Mobilization price': value('price.mobilization') * part,
      'Protection price': value('price.protection') * part,
      'Fixed sums': value('price.fixed') * part,
    };
    const supervision = direct['Labor price'] * value('price.supervision');
    let price = Object.values(direct).reduce((sum, each) => sum + each, 0) + supervision;
    const contingency = price * value('price.contingency');
    price += contingency;
    const overhead = price * value('price.overhead');
    price += overhead;
    const profit = price * value('price.profit');
    price += profit;
    jobPrice += price;
    totals.set(name, {
      Class: zone.class,
      'Washed area': shown(zone.washedArea, 'area'),
      Water: shown(water, 'volume'),
      'Pre-wet water': shown(zone.preWet, 'volume'),
      'Water below': shown(zone.below, 'volume'),
      'Mist water': shown(zone.mist, 'volume'),
      'Mix water': shown(mixWater, 'volume'),
      'Rinse water': shown(zone.rinse, 'volume'),
      'Re-clean water': shown(once * again, 'volume'),
      'Water taken up': shown(absorbed, 'volume'),
      'Mixed cleaner': shown(zone.mix, 'volume'),
      Concentrate: shown(zone.concentrate, 'volume'),
      Runoff: shown(runoff, 'volume'),
      Neutralizer: shown(bicarbonate + sodaAsh, 'mass'),
      'Sodium bicarbonate': shown(bicarbonate, 'mass'),
      'Soda ash': shown(sodaAsh, 'mass'),
      Masking: shown(zone.masking, 'area'),
      'Film to buy': shown(film, 'area'),
      Tape: shown(tape, 'length'),
      'Crew-hours': labor / persons,
      'Labor-hours': labor,
      'Scrape hours': zone.scrape / hour,
      'Mask hours': zone.mask / hour,
      'Pre-wet hours': zone.prewetting / hour,
      'Apply hours': zone.applying / hour,
      'Scrub hours': zone.scrubbing / hour,
      'Rinse hours': zone.rinsing / hour,
      'Standby hours': zone.tending / hour,
      'Patch change hours': zone.changing / hour,
      'Wetting below hours': zone.wettingBelow / hour,
      'Unmask hours': zone.unmask / hour,
      'Glass hours': zone.glass / hour,
      'Move hours': zone.moving / hour,
      'Scaffold hours': zone.scaffold,
      'Brush hours': zone.brushing / hour,
      'Re-clean hours': washHoursOf(zone) * again,
      'Zone set-up hours': zoneSetup(zone),
      'Sample hours': ofJob.sample * part,
      'Mobilize hours': ofJob.mobilize * part,
      'Protect hours': ofJob.protect * part,
      'Set-up hours': setup,
      Days: days,
      'Rental days': hire * part,
      Price: price,
      ...direct,
      Supervision: supervision,
      Contingency: contingency,
      Overhead: overhead,
      Profit: profit,
    });
  }
  const missing = Math.max(0, value('price.minimum') - jobPrice);
  for (const [name, zone] of totals) {
    const upTo = (missing * (own.get(name) as number)) / allOwn;
    zone['Added to reach the minimum'] = upTo;
    zone['Price'] = (zone['Price'] as number) + upTo;
  }
  return totals;
}
