import { bidPrice } from '../../src/estimate/price';

const TWO_DECIMALS = { minimumFractionDigits: 2, maximumFractionDigits: 2 };

/**
 * A price as it is bid, in the user's own way of writing numbers, as the cells beside the pane show it. What is sent to
 * others (`amountInWords`) has American commas whoever sends it.
 * @param price unrounded; NaN where there is none
 * @returns for example `1,234.50`
 */
export function priceText(price: number): string {
  return Number.isNaN(price) ? 'no value' : bidPrice(price).toLocaleString(undefined, TWO_DECIMALS);
}
