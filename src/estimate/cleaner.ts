import type { CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import type { RowRecord } from '../trace/recorder';

/** How a cleaner is mixed and laid on. */
export interface CleanerUse {
  readonly class: 1 | 2 | 3;
  /** Area that one volume of the mix covers in one pass, m2/L. */
  readonly coverage: number;
  /** Parts of water to 1 of concentrate. */
  readonly dilution: number;
}

/**
 * How the cleaner of a class is mixed and laid on; the label's values go in the factors.
 * @param classToUse the class to use
 * @param factors the factors in force
 * @returns coverage and dilution, or undefined for clear water
 */
export function cleanerUse(classToUse: CleanerClass, factors: FactorsInForce): CleanerUse | undefined {
  if (classToUse === 0) return undefined;
  return {
    class: classToUse,
    coverage: factors.value('cleaner.coverage'),
    dilution: factors.value(`cleaner.dilution.${classToUse}`),
  };
}

/**
 * Mixed cleaner of a row: area by coverage in each pass, and the share that is cleaned once more.
 * @param area its washed area, m2
 * @param passes passes of cleaner
 * @param again share of the wash that is done once more, 0 to 1
 * @param use how the cleaner is laid on; undefined for clear water
 * @param rec takes down the line
 * @returns volume in L
 */
export function cleanerMix(
  area: number,
  passes: number,
  again: number,
  use: CleanerUse | undefined,
  rec?: RowRecord,
): number {
  const volume = use === undefined ? 0 : (area / use.coverage) * passes * (1 + again);
  if (use === undefined) rec?.nothing('mix#', 'volume', 'noCleaner');
  else {
    rec?.line('cleanerMix', volume);
  }
  return volume;
}

/**
 * Concentrate in a mix of 1 part to n parts of water, by volume.
 * @param mix volume of the mix, L
 * @param use how the cleaner is mixed; undefined for clear water
 * @param rec takes down the line
 * @returns volume in L
 */
export function concentrate(mix: number, use: CleanerUse | undefined, rec?: RowRecord): number {
  const volume = use === undefined ? 0 : mix / (1 + use.dilution);
  if (use === undefined) rec?.nothing('concentrate#', 'volume', 'noCleaner');
  else if (rec) {
    rec.line('concentrate', volume, { class: use.class });
  }
  return volume;
}

/**
 * Water in the mix.
 * @param mix volume of the mix, L
 * @param ofConcentrate volume of the concentrate in it, L
 * @param rec takes down the line
 * @returns volume in L
 */
export function mixWater(mix: number, ofConcentrate: number, rec?: RowRecord): number {
  const volume = mix - ofConcentrate;
  rec?.line('mixWater', volume);
  return volume;
}
