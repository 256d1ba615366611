import {
  litres,
  litresPerSquareMetre,
  minutes,
  type Litres,
  type LitresPerSquareMetre,
  type Minutes,
  type SquareMetres,
} from '../quantity/quantities';
import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';
import { sorptivity } from './sorptivity';

/** How a zone is wetted before the cleaner. */
export interface PreWet {
  /** Time after which the uptake left for the dwell is small enough. */
  readonly needed: Minutes;
  readonly passes: number;
  /** Time that the face is kept wet: passes times the contact of one. */
  readonly contact: Minutes;
  readonly runoff: LitresPerSquareMetre;
  /** Density of water, kg/L. */
  readonly density: number;
}

/** What holds where nothing is wetted: clear water has no dwell. */
const NO_PREWET: PreWet = {
  needed: minutes(0),
  passes: 0,
  contact: minutes(0),
  runoff: litresPerSquareMetre(0),
  density: 1,
};

/**
 * The pre-wet of a zone where nothing is wetted.
 * @param rec takes down the lines
 * @returns zeros
 */
export function noPreWet(rec?: Recorder): PreWet {
  rec?.line('prewetTime@', '0', 0, 'minutes', 'noPrewet');
  rec?.line('passes@', '0', 0, 'count', 'noPrewet');
  return NO_PREWET;
}

/**
 * The pre-wet of a zone, set by its washed row with the highest suction.
 * The uptake left for the dwell d is S (sqrt(t0 + d) - sqrt(t0)) <= L, so t0 = ((d - (L/S)^2) / (2 L/S))^2
 * where d > (L/S)^2, else 0. Source: square-root-of-time law, Hall and Hoff; ASTM C1585.
 * @param rows the rows of the zone
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns minutes, passes and run-off
 */
export function preWet(rows: readonly WallRow[], factors: FactorsInForce, rec?: Recorder): PreWet {
  const density = factors.value('water.density');
  let governing = 0;
  let thirstiest: WallRow | undefined;
  for (const row of rows) {
    if (row.masked) continue;
    rec?.inRow(row.row, row.wall);
    const value = sorptivity(row, density, rec);
    if (thirstiest === undefined || value > governing) {
      governing = value;
      thirstiest = row;
    }
  }
  const residual = factors.value('prewet.residualUptake') / density;
  const dwell = factors.value('dwell.most');
  // Without suction the ratio is infinite, and the time 0.
  const ratio = residual / governing;
  const needed = (Math.max(0, dwell - ratio ** 2) / (2 * ratio)) ** 2;
  const passContact = factors.value('prewet.passContact');
  const leastPasses = factors.value('prewet.leastPasses');
  const passes = Math.max(leastPasses, Math.ceil(needed / passContact - constants.guard.value));
  const contact = passes * passContact;
  const runoff = passes * factors.value('prewet.runoffPerPass');
  if (rec) {
    rec.line('S@', `S_r${String(thirstiest?.row ?? 0)}`, governing, 'sorptivity', 'governingSuction');
    rec.line('residual', 'prewet_residualUptake / water_density', residual, 'volumePerArea', 'residual');
    rec.line(
      'prewetTime@',
      governing === 0 ? '0' : '(max(0 * dwell_most, dwell_most - (residual / S@)^2) / (2 * residual / S@))^2',
      needed,
      'minutes',
      'prewetTime',
    );
    rec.line(
      'passes@',
      'max(prewet_leastPasses, ceil(prewetTime@ / prewet_passContact - guard))',
      passes,
      'count',
      'passes',
    );
    rec.line('prewetContact@', 'passes@ * prewet_passContact', contact, 'minutes', 'prewetContact');
  }
  return {
    needed: minutes(needed),
    passes,
    contact: minutes(contact),
    runoff: litresPerSquareMetre(runoff),
    density,
  };
}

/**
 * Water that the face of a row takes up while it is kept wet, by its own suction.
 * @param row the wall row
 * @param area its washed area, m2
 * @param wet the pre-wet of the zone
 * @param rec takes down the line; `S#` has been taken down with the pre-wet of the zone
 * @returns volume in L
 */
export function absorbedWater(row: WallRow, area: SquareMetres, wet: PreWet, rec?: Recorder): Litres {
  const volume = area * sorptivity(row, wet.density) * Math.sqrt(wet.contact);
  if (rec) {
    if (wet.passes === 0) rec.line('absorbed#', '0', 0, 'volume', 'noPrewet');
    else if (row.masked) rec.line('absorbed#', '0', 0, 'volume', 'washedArea');
    else rec.line('absorbed#', 'washedArea# * S# * sqrt(prewetContact@)', volume, 'volume', 'absorbed');
  }
  return litres(volume);
}

/**
 * The pre-wet water of a row: what its face takes up, and the run-off of each pass.
 * @param area its washed area, m2
 * @param absorbed water that the face takes up, L
 * @param wet the pre-wet of the zone
 * @param rec takes down the line
 * @returns volume in L
 */
export function preWetWater(area: SquareMetres, absorbed: Litres, wet: PreWet, rec?: Recorder): Litres {
  const volume = absorbed + area * wet.runoff;
  if (wet.passes === 0) rec?.line('preWetWater#', 'absorbed#', volume, 'volume', 'noPrewet');
  else {
    const expression = 'absorbed# + washedArea# * passes@ * prewet_runoffPerPass';
    rec?.line('preWetWater#', expression, volume, 'volume', 'prewetWater');
  }
  return litres(volume);
}
