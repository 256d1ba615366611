import {
  litres,
  litresPerSquareMetre,
  type Litres,
  type LitresPerSquareMetre,
  type SquareMetres,
} from '../quantity/quantities';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import { rinseFlow } from './nozzle';

/**
 * Rinse water on an area: flow by the area rinsed in a minute, times the rinses.
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns L/m2
 */
export function rinsePerArea(factors: FactorsInForce, rec?: Recorder): LitresPerSquareMetre {
  const perArea = (rinseFlow(factors, rec) / factors.value('rate.rinse')) * factors.value('rinse.count');
  rec?.line('rinsePerArea', 'flow / rate_rinse * rinse_count', perArea, 'volumePerArea', 'rinsePerArea');
  return litresPerSquareMetre(perArea);
}

/**
 * Rinse water of a row.
 * @param area its washed area, m2
 * @param perArea rinse water on an area, L/m2
 * @param rec takes down the line
 * @returns volume in L
 */
export function rinseWater(area: SquareMetres, perArea: LitresPerSquareMetre, rec?: Recorder): Litres {
  const volume = area * perArea;
  rec?.line('rinseWater#', 'washedArea# * rinsePerArea', volume, 'volume', 'rinseWater');
  return litres(volume);
}
