import { cleanerMix, cleanerUse, concentrate } from '../estimate/cleaner';
import { noQuantities, quantityIds } from '../estimate/quantities';
import { estimateJob, type ZoneEstimate } from '../estimate/schedule';
import { withUnit } from '../quantity/shown-unit';
import { show, unitOf, type Kind, type System } from '../quantity/systems';
import { constants } from '../rules/constants';
import { classInWords } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import { netArea } from '../walls/net-area';
import type { WallRow } from '../walls/wall-row';
import { factorAmount, siteAmount } from './amount';
import { siteWashes } from './washes';

const grouped = new Intl.NumberFormat('en-US', { maximumFractionDigits: 0 });
const TEN = 10;

/** Something to bring to the wall. */
export interface ToBring {
  readonly label: string;
  /** Rounded up, with its unit. */
  readonly value: string;
}

/**
 * A quantity as it is ordered or loaded: rounded up, to two digits or to a whole unit, so that it is enough.
 * @param value in the base unit
 * @param kind what it measures
 * @param system the display system
 * @returns for example `1,300 gal`
 */
export function tradeAmount(value: number, kind: Kind, system: System): string {
  const shown = show(value, kind, system);
  const step = Math.max(1, TEN ** (Math.floor(Math.log10(Math.max(shown, 1))) - 1));
  const steps = Math.ceil((shown / step) * (1 - constants.guard.value));
  return withUnit(grouped.format(steps * step), unitOf(kind, system));
}

/**
 * What some walls of a zone take: cleaner by class, ready-mixed and as concentrate, water, masking.
 * @param zone the zone
 * @param zones every zone of the job
 * @param rows the walls that are worked on
 * @param factors the factors in force
 * @returns what to bring, rounded up; empty where the zone has no numbers
 */
export function toBring(
  zone: ZoneEstimate,
  zones: readonly ZoneEstimate[],
  rows: ReadonlySet<WallRow>,
  factors: FactorsInForce,
): ToBring[] {
  if (zone.finding !== undefined) return [];
  const sums = noQuantities();
  estimateJob(
    zones.map(({ zone: each }) => each),
    factors,
    {
      wanted: [zone.zone],
      takeRow: (row, quantities) => {
        if (rows.has(row)) for (const id of quantityIds) sums[id] += quantities[id];
      },
    },
  );
  const { system } = factors;
  const lines: readonly (readonly [string, number, Kind])[] = [
    ['Water, with that of the mix', sums.water, 'volume'],
    ['Masking film', sums.film, 'area'],
    ['Masking tape', sums.tape, 'length'],
    ['Room for runoff to collect', sums.runoff, 'volume'],
    ['Sodium bicarbonate', sums.bicarbonate, 'mass'],
    ['Soda ash', sums.sodaAsh, 'mass'],
  ];
  const others = lines
    .filter(([, value]) => value > 0)
    .map(([label, value, kind]) => ({ label, value: tradeAmount(value, kind, system) }));
  return [...cleanerOf(zone, rows, factors), ...others];
}

/**
 * Concentrate as it is loaded: in whole containers, and what of it is needed.
 * @param value L
 * @param factors the factors in force
 * @returns for example `1 container of 5 gal (3.7 gal needed)`
 */
export function inContainers(value: number, factors: FactorsInForce): string {
  const { system } = factors;
  const count = Math.ceil((value / factors.value('cleaner.container')) * (1 - constants.guard.value));
  const containers = `${grouped.format(count)} ${count === 1 ? 'container' : 'containers'}`;
  const size = factorAmount('cleaner.container', factors);
  return `${containers} of ${size} (${siteAmount(value, 'volume', system)} needed)`;
}

function cleanerOf(zone: ZoneEstimate, rows: ReadonlySet<WallRow>, factors: FactorsInForce): ToBring[] {
  return siteWashes(zone).flatMap((wash) => {
    const use = cleanerUse(wash.class, factors);
    const again = factors.value('reclean.share');
    const mix = wash.walls.reduce((sum, { rows: alike, how: { cycle } }) => {
      const area = alike.filter((row) => rows.has(row)).reduce((all, row) => all + netArea(row), 0);
      return sum + (cycle ? cleanerMix(area, cycle.passes, again, use) : 0);
    }, 0);
    if (!(mix > 0)) return [];
    const named = classInWords(wash.class);
    return [
      { label: `Mixed cleaner: ${named}`, value: tradeAmount(mix, 'volume', factors.system) },
      { label: `Concentrate in it: ${named}`, value: inContainers(concentrate(mix, use), factors) },
    ];
  });
}
