import { litres, type Litres, type SquareMetres } from '../quantity/quantities';
import type { CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';

/** How the cleaner of a zone is mixed and laid on. */
export interface CleanerUse {
  /** Area that one volume of the mix covers, m2/L. */
  readonly coverage: number;
  readonly coats: number;
  /** Parts of water to 1 of concentrate. */
  readonly dilution: number;
}

/**
 * How the cleaner of a class is mixed and laid on; the label's values go in the factors.
 * @param classToUse the class to use
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns coverage, coats and dilution, or undefined for clear water
 */
export function cleanerUse(
  classToUse: CleanerClass,
  factors: FactorsInForce,
  rec?: Recorder,
): CleanerUse | undefined {
  if (classToUse === 0) return undefined;
  const dilution = `cleaner.dilution.${classToUse}` as const;
  rec?.line('dilution@', `cleaner_dilution_${classToUse}`, factors.value(dilution), 'ratio', 'dilution');
  return {
    coverage: factors.value('cleaner.coverage'),
    coats: factors.value('cleaner.applications'),
    dilution: factors.value(dilution),
  };
}

/**
 * Mixed cleaner of a row: area by coverage, times the coats.
 * @param area its washed area, m2
 * @param use how the cleaner is laid on; undefined for clear water
 * @param rec takes down the line
 * @returns volume in L
 */
export function cleanerMix(area: SquareMetres, use: CleanerUse | undefined, rec?: Recorder): Litres {
  const volume = use === undefined ? 0 : (area / use.coverage) * use.coats;
  if (use === undefined) rec?.line('mix#', '0', volume, 'volume', 'noCleaner');
  else
    rec?.line(
      'mix#',
      'washedArea# / cleaner_coverage * cleaner_applications',
      volume,
      'volume',
      'cleanerMix',
    );
  return litres(volume);
}

/**
 * Concentrate in a mix of 1 part to n parts of water, by volume.
 * @param mix volume of the mix, L
 * @param use how the cleaner is mixed; undefined for clear water
 * @param rec takes down the line
 * @returns volume in L
 */
export function concentrate(mix: Litres, use: CleanerUse | undefined, rec?: Recorder): Litres {
  const volume = use === undefined ? 0 : mix / (1 + use.dilution);
  if (use === undefined) rec?.line('concentrate#', '0', volume, 'volume', 'noCleaner');
  else rec?.line('concentrate#', 'mix# / (1 + dilution@)', volume, 'volume', 'concentrate');
  return litres(volume);
}

/**
 * Water in the mix.
 * @param mix volume of the mix, L
 * @param ofConcentrate volume of the concentrate in it, L
 * @param rec takes down the line
 * @returns volume in L
 */
export function mixWater(mix: Litres, ofConcentrate: Litres, rec?: Recorder): Litres {
  const volume = mix - ofConcentrate;
  rec?.line('mixWater#', 'mix# - concentrate#', volume, 'volume', 'mixWater');
  return litres(volume);
}
