import { dryingTime } from '../estimate/drying';
import { nozzleFlow, reactionForce } from '../estimate/nozzle';
import type { ZoneEstimate } from '../estimate/schedule';
import { residueOf } from '../govern/residue';
import { tooOld, tooYoung } from '../hazards/age';
import { weakerBelow, weakerMasked } from '../hazards/below';
import {
  acidOnCalcareous,
  driesEarly,
  driesTooSoon,
  sampleMissing,
  stainUnderAcid,
  unmaskedGlassOrMetal,
} from '../hazards/cleaner-on-wall';
import { raisesDust } from '../hazards/dust';
import { appliedUnderPressure, narrowJet, overPressure } from '../hazards/jet';
import {
  classesOn,
  isWashed,
  rowsUnderAcid,
  strongestClass,
  takesAcid,
  takesCleaner,
  washedRows,
} from '../hazards/washed';
import { tooCold, tooHot, tooWindy, type WeatherHazard } from '../hazards/weather';
import { toBase } from '../quantity/conversions';
import { withUnit } from '../quantity/shown-unit';
import {
  cautions,
  workAtHeight,
  type Caution,
  type CautionNumber,
  type CautionTopic,
  type CautionWhen,
} from '../rules/cautions';
import { className, type CleanerClass } from '../rules/cleaner-classes';
import type { FactorId } from '../rules/factors';
import type { FactorsInForce } from '../rules/read-factors';
import type { SourceKind } from '../rules/source-kinds';
import type { SiteSourceId } from '../rules/site-sources';
import type { WallRow } from '../walls/wall-row';
import { amount, factorAmount, rounded } from './amount';
import { nozzleHazardWords, weatherHazardWords } from './hazard-words';
import { stackedHeight } from './levels';
import { materialsNamed, wallsNamed } from './named';
import { weatherWords } from './weather-words';

/** Where a caution applies, and what in the workbook makes it apply. */
export interface CautionPlace {
  /** Zones, with their walls where it is not the whole zone; empty for the whole job. */
  readonly where: string;
  /** Empty where the caution needs no reason. */
  readonly why: string;
}

/** A caution as it applies to this workbook. */
export interface AppliedCaution {
  readonly id: string;
  readonly topic: CautionTopic;
  readonly text: string;
  readonly places: readonly CautionPlace[];
  /** True where the workbook as it stands breaks it. */
  readonly stop: boolean;
  readonly source: SiteSourceId;
  readonly kind: SourceKind;
}

interface Site {
  /** Those that the sheet is for. */
  readonly zones: readonly ZoneEstimate[];
  /** Every zone of the job, for what stands below. */
  readonly all: readonly ZoneEstimate[];
  readonly factors: FactorsInForce;
}

/** Why a caution applies in a zone, and the rows concerned where it is not the whole zone. */
interface Reason {
  readonly why: string;
  readonly rows?: readonly WallRow[];
}

type Test = (zone: ZoneEstimate, caution: Caution, site: Site) => Reason | undefined;

/**
 * The cautions that apply to a job: those that come first, then what class, materials, height, pressure, runoff and
 * weather of the zones call for.
 * @param zones the estimates of the zones
 * @param factors the factors in force
 * @param all every zone of the job, where the sheet is for some of them
 * @returns the cautions, in the order of the sheet
 */
export function cautionSheet(
  zones: readonly ZoneEstimate[],
  factors: FactorsInForce,
  all: readonly ZoneEstimate[] = zones,
): AppliedCaution[] {
  return cautions.flatMap((caution) => {
    const places = placesOf(caution, { zones, all, factors });
    const { id, topic, stop = false, source, kind } = caution;
    return places.length === 0
      ? []
      : [{ id, topic, text: textOf(caution, factors), places, stop, source, kind }];
  });
}

function placesOf(caution: Caution, site: Site): CautionPlace[] {
  if (caution.when === 'always') return [{ where: '', why: '' }];
  const test = tests[caution.when];
  const zonesByReason = new Map<string, string[]>();
  for (const zone of site.zones) {
    const reason = test(zone, caution, site);
    if (reason === undefined || reason.rows?.length === 0) continue;
    const { name } = zone.zone;
    const where = reason.rows ? `${name}: ${wallsNamed(reason.rows)}` : name;
    zonesByReason.set(reason.why, [...(zonesByReason.get(reason.why) ?? []), where]);
  }
  return [...zonesByReason].map(([why, where]) => ({ where: where.join('; '), why }));
}

const tests: Readonly<Record<Exclude<CautionWhen, 'always'>, Test>> = {
  washed: (zone) => (isWashed(zone) ? { why: 'washed' } : undefined),
  cleaner: (zone) => (takesCleaner(zone) ? { why: washedWith(zone) } : undefined),
  acid: (zone) => (takesAcid(zone) ? { why: washedWith(zone) } : undefined),
  'acid on suspended scaffold': (zone, _, { factors }) => {
    const usual = factors.choice('access.kind');
    const rows = rowsUnderAcid(zone).filter(({ access }) => (access ?? usual) === 'suspended');
    return { why: washedWith(zone), rows };
  },
  'stain under acid': (zone) => underTheirClasses(zone, stainUnderAcid(zone)),
  'acid on calcareous': (zone) => underTheirClasses(zone, acidOnCalcareous(zone)),
  'unmasked glass or metal': (zone) => beside(unmaskedGlassOrMetal(zone), 'not masked'),
  'washed group': (zone, { groups }) =>
    beside(
      washedRows(zone).filter(({ material }) => groups?.includes(material.group)),
      'washed',
    ),
  'cleaner beside group': (zone, { groups }) =>
    !takesCleaner(zone)
      ? undefined
      : beside(
          zone.zone.rows.filter(({ material }) => groups?.includes(material.group)),
          washedWith(zone),
        ),
  'acid beside masked group': (zone, { groups }) =>
    !takesAcid(zone)
      ? undefined
      : beside(
          zone.zone.rows.filter(({ masked, material }) => masked && groups?.includes(material.group)),
          `masked, ${washedWith(zone)}`,
        ),
  'cleaner beside openings': (zone, _, { factors }) => {
    const rows = zone.zone.rows.filter(({ masked, openings }) => !masked && openings > 0);
    const area = rows.reduce((sum, { openings }) => sum + openings, 0);
    return !takesCleaner(zone)
      ? undefined
      : { why: `${amount(area, 'area', factors.system)} of openings, ${washedWith(zone)}`, rows };
  },
  'weaker masked': (zone) => beside(weakerMasked(zone), `masked, ${washedWith(zone)}`),
  'weaker below': (zone, _, { all }) => {
    const rows = weakerBelow(zone, all);
    return rows.length === 0
      ? undefined
      : { why: `${materialsNamed(rows)} below (${wallsNamed(rows)}), ${washedWith(zone)}` };
  },
  fixtures: ({ zone }) => {
    const rows = zone.rows.filter(({ fixtures }) => fixtures > 0);
    const count = rows.reduce((sum, { fixtures }) => sum + fixtures, 0);
    return { why: `${String(count)} ${count === 1 ? 'fixture' : 'fixtures'}`, rows };
  },
  height: ({ zone }, _, { factors }) => {
    const height = stackedHeight(zone.rows);
    const limit = toBase(workAtHeight.value, workAtHeight.unit);
    if (height > limit) return { why: `${amount(height, 'length', factors.system)} high` };
    const unstated = zone.rows.filter((row) => row.height === 0);
    return unstated.length === 0 ? undefined : { why: 'height not stated', rows: unstated };
  },
  dust: (zone, _, { factors }) => {
    const scraped = washedRows(zone).filter(({ material }) => material.masonry);
    const residues = [...new Set(scraped.map(residueOf))].join(' and ');
    return raisesDust(zone)
      ? {
          why: `${amount(zone.totals.scrapeHours, 'laborHours', factors.system)} of scraping and brushing, ${residues} residue`,
        }
      : undefined;
  },
  runoff: (zone, _, { factors }) =>
    !isWashed(zone)
      ? undefined
      : {
          why:
            zone.totals.runoff > 0
              ? `${amount(zone.totals.runoff, 'volume', factors.system)} to collect`
              : 'none of it is collected, as the workbook stands',
        },
  weather: (zone, _, { factors }) => {
    const dries = dryingTime(factors);
    const dry =
      takesCleaner(zone) && Number.isFinite(dries)
        ? `; the cleaner is dry in ${amount(dries, 'minutes', factors.system)}`
        : '';
    return isWashed(zone) ? { why: `${weatherWords(factors)}${dry}` } : undefined;
  },
  alkali: ({ totals }, _, { factors }) => {
    const { system } = factors;
    const alkalis = [
      [totals.bicarbonate, 'sodium bicarbonate'],
      [totals.sodaAsh, 'soda ash'],
    ] as const;
    const used = alkalis.filter(([mass]) => mass > 0);
    return used.length === 0
      ? undefined
      : { why: used.map(([mass, name]) => `${amount(mass, 'mass', system)} of ${name}`).join(', ') };
  },
  jet: (zone, _, { factors }) => {
    const pressure = factors.value('nozzle.pressure');
    const flow = nozzleFlow(factors.value('nozzle.number'), pressure);
    const force = reactionForce(flow, pressure);
    return !isWashed(zone)
      ? undefined
      : {
          why: `${factorAmount('nozzle.pressure', factors)}, ${amount(flow, 'flow', factors.system)}: pushes back with ${amount(force, 'force', factors.system)}; ${factorAmount('nozzle.distance', factors)} off, fan of ${factorAmount('nozzle.angle', factors)}`,
        };
  },
  'narrow jet': (zone, _, { factors }) => {
    const narrow = narrowJet(zone, factors);
    return narrow.length === 0 ? undefined : { why: nozzleHazardWords(narrow, factors) };
  },
  'over pressure': (zone, _, { factors }) => {
    const rows = overPressure(zone, factors);
    const takes = [...new Map(rows.map(({ material }) => [material.code, material])).values()].map(
      ({ name, pressure }) => `${name} takes ${amount(pressure, 'pressure', factors.system)}`,
    );
    return { why: `${factorAmount('nozzle.pressure', factors)} set, ${takes.join(', ')}`, rows };
  },
  'applied under pressure': (zone, _, { factors }) => {
    const most = appliedUnderPressure(zone, factors);
    return most === undefined
      ? undefined
      : {
          why: `${factorAmount('apply.pressure', factors)} set, the most is ${amount(most, 'pressure', factors.system)}`,
        };
  },
  'sample missing': (zone, _, { factors }) =>
    sampleMissing(zone, factors)
      ? { why: `${factorAmount('sample.area', factors)} inspected so far` }
      : undefined,
  'too young': (zone, _, { factors }) => {
    const rows = tooYoung(zone, factors);
    const youngest = Math.min(...rows.map(({ age }) => age));
    return { why: `${amount(youngest, 'days', factors.system)} old`, rows };
  },
  'too old': (zone, _, { factors }) => {
    const rows = tooOld(zone, factors);
    const oldest = Math.max(...rows.map(({ age }) => age));
    return { why: `${amount(oldest, 'days', factors.system)} old`, rows };
  },
  'too cold': (zone, _, { factors }) => brokenBy(tooCold(zone, factors), factors),
  'too hot': (zone, _, { factors }) => brokenBy(tooHot(zone, factors), factors),
  'too windy': (zone, _, { factors }) => brokenBy(tooWindy(zone, factors), factors),
  'dries early': (zone, _, { factors }) => dryBefore(driesEarly(zone, factors), 'dwell.most', factors),
  'dries too soon': (zone, _, { factors }) => dryBefore(driesTooSoon(zone, factors), 'dwell.least', factors),
};

function dryBefore(
  dries: number | undefined,
  dwell: 'dwell.least' | 'dwell.most',
  factors: FactorsInForce,
): Reason | undefined {
  if (dries === undefined) return undefined;
  const which = dwell === 'dwell.most' ? 'most' : 'least';
  return {
    why: `dry in ${amount(dries, 'minutes', factors.system)}, ${which} dwell ${factorAmount(dwell, factors)}`,
  };
}

function brokenBy(found: readonly WeatherHazard[], factors: FactorsInForce): Reason | undefined {
  return found.length === 0 ? undefined : { why: weatherHazardWords(found, factors) };
}

function beside(rows: readonly WallRow[], how: string): Reason {
  return { why: `${materialsNamed(rows)}, ${how}`, rows };
}

function underTheirClasses(zone: ZoneEstimate, rows: readonly WallRow[]): Reason {
  return beside(rows, classesOn(zone, rows).map(classWords).join(' and '));
}

/** The strongest class of the zone, which decides what is to be kept from it. */
function washedWith(zone: ZoneEstimate): string {
  const used = strongestClass(zone);
  return used === undefined ? 'not washed' : classWords(used);
}

function classWords(of: CleanerClass): string {
  return `class ${String(of)}, ${className(of)}`;
}

function textOf({ text, numbers }: Caution, factors: FactorsInForce): string {
  return text.replace(/\{(factor:)?([^}]+)\}/g, (_, ofFactor: string | undefined, name: string) =>
    ofFactor === undefined ? numberText(numbers?.[name], factors) : factorAmount(name as FactorId, factors),
  );
}

function numberText(number: CautionNumber | undefined, factors: FactorsInForce): string {
  if (number === undefined) return '';
  if ('kind' in number) return amount(toBase(number.value, number.unit), number.kind, factors.system);
  if (number.unit === 'pH') return number.value.toFixed(1);
  return withUnit(rounded(number.value), number.unit);
}
