const BEGINS = /^(?:(?:grand|net|gross)\s+)?(?:sub[\s-]*)?totals?\b/i;
const ENDS = /\b(?:sub[\s-]?)?totals?\s*:?$/i;

/**
 * Whether a row is a sum of others by what it is called: it would count its walls twice.
 * @param label what the row is of
 * @returns true for `Total`, `Subtotal north`, `North total`
 */
export function isTotal(label: string): boolean {
  return BEGINS.test(label) || ENDS.test(label);
}
