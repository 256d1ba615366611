import { dryingTime } from '../estimate/drying';
import { reactionForce, rinseFlow } from '../estimate/nozzle';
import type { ZoneEstimate } from '../estimate/schedule';
import { residueOf } from '../govern/need-class';
import { toBase } from '../quantity/conversions';
import {
  cautions,
  workAtHeight,
  type Caution,
  type CautionNumber,
  type CautionTopic,
  type CautionWhen,
} from '../rules/cautions';
import { className, GENTLEST_ACID } from '../rules/cleaner-classes';
import type { FactorId } from '../rules/factors';
import type { FactorsInForce } from '../rules/read-factors';
import type { SourceKind } from '../rules/source-kinds';
import type { SiteSourceId } from '../rules/site-sources';
import type { WallRow } from '../walls/wall-row';
import { amount, factorAmount, readable, rounded } from './amount';
import { stackedHeight } from './levels';
import { mostSensitive } from './most-sensitive';
import { materialsNamed, wallsNamed } from './named';
import { narrowJet } from './narrow-jet';
import { tooCold } from './too-cold';
import { weatherWords } from './weather-words';
import { weakerBelow, weakerMasked } from './weaker-below';

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
  readonly zones: readonly ZoneEstimate[];
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
 * @returns the cautions, in the order of the sheet
 */
export function cautionSheet(zones: readonly ZoneEstimate[], factors: FactorsInForce): AppliedCaution[] {
  return cautions.flatMap((caution) => {
    const places = placesOf(caution, { zones, factors });
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
  washed: (zone) => (zone.governing ? { why: 'washed' } : undefined),
  cleaner: (zone) => (classOf(zone) > 0 ? { why: washedWith(zone) } : undefined),
  acid: (zone) => (classOf(zone) >= GENTLEST_ACID ? { why: washedWith(zone) } : undefined),
  'acid on group': (zone, { groups }) =>
    classOf(zone) < GENTLEST_ACID
      ? undefined
      : beside(
          zone.zone.rows.filter(({ masked, material }) => !masked && groups?.includes(material.group)),
          washedWith(zone),
        ),
  'washed group': ({ zone }, { groups }) =>
    beside(
      zone.rows.filter(({ masked, material }) => !masked && groups?.includes(material.group)),
      'washed',
    ),
  'cleaner beside group': (zone, { groups }) =>
    classOf(zone) === 0
      ? undefined
      : beside(
          zone.zone.rows.filter(({ material }) => groups?.includes(material.group)),
          washedWith(zone),
        ),
  'acid beside masked group': (zone, { groups }) =>
    classOf(zone) < GENTLEST_ACID
      ? undefined
      : beside(
          zone.zone.rows.filter(({ masked, material }) => masked && groups?.includes(material.group)),
          `masked, ${washedWith(zone)}`,
        ),
  'cleaner beside openings': (zone, _, { factors }) => {
    const rows = zone.zone.rows.filter(({ masked, openings }) => !masked && openings > 0);
    const area = rows.reduce((sum, { openings }) => sum + openings, 0);
    return classOf(zone) === 0
      ? undefined
      : { why: `${amount(area, 'area', factors.system)} of openings, ${washedWith(zone)}`, rows };
  },
  'weaker masked': (zone) => beside(weakerMasked(zone), `masked, ${washedWith(zone)}`),
  'weaker below': (zone, _, { zones }) => {
    const rows = weakerBelow(zone, zones);
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
  scrape: ({ totals, zone }, _, { factors }) => {
    const rows = zone.rows.filter(({ masked }) => !masked);
    const residues = [...new Set(rows.map(residueOf))].join(' and ');
    return totals.scrapeHours > 0
      ? {
          why: `${amount(totals.scrapeHours, 'crewHours', factors.system)} of dry scraping, ${residues} residue`,
        }
      : undefined;
  },
  runoff: ({ governing, totals }, _, { factors }) =>
    governing === undefined
      ? undefined
      : {
          why:
            totals.runoff > 0
              ? `${amount(totals.runoff, 'volume', factors.system)} to collect`
              : 'none of it is collected, as the workbook stands',
        },
  weather: (zone, _, { factors }) => {
    const dries = dryingTime(factors);
    const dry =
      classOf(zone) > 0 && Number.isFinite(dries)
        ? `; the cleaner is dry in ${amount(dries, 'minutes', factors.system)}`
        : '';
    return zone.governing && { why: `${weatherWords(factors)}${dry}` };
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
    const flow = rinseFlow(factors);
    const force = reactionForce(flow, factors.value('nozzle.pressure'));
    return zone.governing === undefined
      ? undefined
      : {
          why: `${factorAmount('nozzle.pressure', factors)}, ${amount(flow, 'flow', factors.system)}: pushes back with ${amount(force, 'force', factors.system)}; ${factorAmount('nozzle.distance', factors)} off, fan of ${factorAmount('nozzle.angle', factors)}`,
        };
  },
  'narrow jet': ({ governing }, _, { factors }) => {
    const narrow = narrowJet(factors);
    return governing === undefined || narrow === '' ? undefined : { why: narrow };
  },
  'over pressure': ({ zone }, _, { factors }) => {
    const weakest = mostSensitive(zone.rows);
    return weakest !== undefined && factors.value('nozzle.pressure') > weakest.pressure
      ? {
          why: `${factorAmount('nozzle.pressure', factors)} set, ${weakest.name} takes ${amount(weakest.pressure, 'pressure', factors.system)}`,
        }
      : undefined;
  },
  'too young': ({ zone }, _, { factors }) => {
    const rows = zone.rows.filter(
      ({ masked, age }) => !masked && age > 0 && age < factors.value('limit.age'),
    );
    const youngest = Math.min(...rows.map(({ age }) => age));
    return { why: `${amount(youngest, 'days', factors.system)} old`, rows };
  },
  'too cold': (zone, _, { factors }) => {
    const cold = tooCold(factors);
    return zone.governing === undefined || cold === '' ? undefined : { why: cold };
  },
  'dries early': (zone, _, { factors }) => {
    const dries = dryingTime(factors);
    return classOf(zone) > 0 && dries < factors.value('dwell.most')
      ? {
          why: `dry in ${amount(dries, 'minutes', factors.system)}, most dwell ${factorAmount('dwell.most', factors)}`,
        }
      : undefined;
  },
};

function beside(rows: readonly WallRow[], how: string): Reason {
  return { why: `${materialsNamed(rows)}, ${how}`, rows };
}

/** The class that a zone is washed with; none where nothing is washed. */
function classOf({ governing }: ZoneEstimate): number {
  return governing?.classToUse ?? -1;
}

function washedWith(zone: ZoneEstimate): string {
  const used = classOf(zone);
  return `class ${String(used)}, ${className(used)}`;
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
  return `${rounded(number.value)} ${readable(number.unit)}`;
}
