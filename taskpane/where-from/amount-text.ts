import { perUnit } from '../../src/quantity/shown-unit';
import { classText } from '../../src/review/trace-words';
import type { TraceLine } from '../../src/trace/recorder';
import { priceText } from '../shared/price-text';

const DIGITS = 4;
const DECIMALS = 2;
const MONEY = 'money';

/**
 * A number of a trace with its unit, as an estimator writes it; money without one, since it is the user's.
 * @param line the line of the number
 * @returns for example `1,236.4 ft²` or `class 2 (buffered mild acid)`
 */
export function amountText(line: TraceLine): string {
  const { value, unit } = line;
  if (unit === MONEY) return priceText(value);
  const number =
    Math.abs(value) >= 1
      ? value.toLocaleString(undefined, { maximumFractionDigits: DECIMALS })
      : value.toLocaleString(undefined, { maximumSignificantDigits: DIGITS });
  return classText(line) ?? (unit === '1' ? number : `${number} ${perUnit(unit) ?? unit}`);
}
