/** How much mortar was left on the face. */
export const residues = ['light', 'moderate', 'heavy'] as const;

/** A residue. */
export type Residue = (typeof residues)[number];

/**
 * The residue assumed where none was seen: brushed down daily leaves light, otherwise moderate (assumption).
 * Where residue is stated it was seen, and brushing counts no second time.
 * @param brushed whether the work was brushed down each day
 * @returns the residue to go by
 */
export function assumedResidue(brushed: boolean): Residue {
  return brushed ? 'light' : 'moderate';
}
