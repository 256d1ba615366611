// Park and Miller, "Random number generators: good ones are hard to find", Communications of the ACM 31 (1988).
const MULTIPLIER = 16807;
const MODULUS = 2147483647;

/**
 * A source of numbers between 0 and 1 that is the same for the same seed on every machine.
 * @param seed a whole number
 * @returns gives the next number at each call
 */
export function chance(seed: number): () => number {
  let state = (((Math.trunc(seed) % (MODULUS - 1)) + MODULUS - 1) % (MODULUS - 1)) + 1;
  return () => {
    state = (state * MULTIPLIER) % MODULUS;
    return state / MODULUS;
  };
}

/**
 * The value of a triangular distribution below which a share of its values lies.
 * @param share 0 to 1
 * @param low least value
 * @param likely most likely value
 * @param high greatest value
 * @returns the value
 */
export function triangular(share: number, low: number, likely: number, high: number): number {
  if (high === low) return likely;
  const bend = (likely - low) / (high - low);
  return share < bend
    ? low + Math.sqrt(share * (high - low) * (likely - low))
    : high - Math.sqrt((1 - share) * (high - low) * (high - likely));
}
