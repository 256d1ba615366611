/** The mortar types of ASTM C270. */
export const mortarTypes = ['M', 'S', 'N', 'O'] as const;

/** A mortar type. */
export type MortarType = (typeof mortarTypes)[number];

/** The type taken where the row states none; common practice for veneer, and the trace says that it was a default. */
export const DEFAULT_MORTAR: MortarType = 'N';

/**
 * Whether a mortar counts as strong, so that its residue calls for a stronger cleaner.
 * @param type the mortar type
 * @returns true for M and S
 */
export function isStrong(type: MortarType): boolean {
  return type === 'M' || type === 'S';
}
