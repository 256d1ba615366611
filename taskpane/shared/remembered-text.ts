import type { RememberedGroup } from '../../src/review/audit/remembered';

/**
 * Formulas as they are kept in the workbook.
 * @param groups the formulas
 * @returns the text to keep
 */
export function rememberedText(groups: readonly RememberedGroup[]): string {
  return JSON.stringify({ formulas: groups });
}

/**
 * Formulas that were kept in the workbook.
 * @param text the text that was kept
 * @returns the formulas; none where the text is not ours, so that the review goes on without them
 */
export function readRemembered(text: string | undefined): RememberedGroup[] {
  if (text === undefined) return [];
  try {
    const { formulas } = JSON.parse(text) as { formulas?: unknown };
    return Array.isArray(formulas) ? formulas.filter(isGroup) : [];
  } catch {
    return [];
  }
}

function isGroup(group: unknown): group is RememberedGroup {
  if (!Array.isArray(group)) return false;
  const [sheet, form, formula, addresses] = group as unknown[];
  return (
    [sheet, form, formula].every((text) => typeof text === 'string') &&
    Array.isArray(addresses) &&
    addresses.every((address) => typeof address === 'string')
  );
}
