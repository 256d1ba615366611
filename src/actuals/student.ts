import { constants } from '../rules/constants';

// Halvings of the bracket: more change no digit of a double.
const HALVINGS = 80;

/**
 * Share of Student's t distribution within plus or minus a value, for whole degrees of freedom. Source: Abramowitz and
 * Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4.
 * @param t the value, 0 or more
 * @param degrees degrees of freedom, whole, 1 or more
 * @returns 0 to 1
 */
function within(t: number, degrees: number): number {
  const angle = Math.atan(t / Math.sqrt(degrees));
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  const odd = degrees % 2 === 1;
  let term = odd ? cosine : 1;
  let sum = degrees === 1 ? 0 : term;
  for (let power = odd ? 3 : 2; power <= degrees - 2; power += 2) {
    term *= ((power - 1) / power) * cosine ** 2;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
}

/**
 * The value that Student's t stays below with a chance of 90%: the upper end of its 80% range.
 * @param degrees degrees of freedom, whole, 1 or more
 * @returns the quantile
 */
export function upperTenth(degrees: number): number {
  const wanted = 2 * constants.upperTenth.value - 1;
  let low = 0;
  // With one degree of freedom, the widest, it is 3.08.
  let high = 4;
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (within(middle, degrees) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
