import { answer, readQuestion } from '../../functions/arguments';

export const HEADINGS = [
  'Wall',
  'Zone',
  'Level',
  'Material',
  'Area',
  'Height',
  'Openings',
  'Opening perimeter',
  'Fixtures',
  'Mortar',
  'Residue',
  'Age',
  'Masked',
  'Receives',
];

/** A washed brick wall over a masked limestone base, in one zone. */
export const BRICK_OVER_MASKED_BASE = [
  ['S-1', 'South', 1, 'Red clay brick', 1000, 20, 100, 120, 3, 'N', 'moderate', 10, 'no', ''],
  ['S-2', 'South', 2, 'Limestone', 200, 4, 0, 0, 0, 'N', 'light', 10, 'yes', ''],
];

export function estimated(rows: unknown[][], factors: unknown[][] = []) {
  const question = readQuestion([HEADINGS, ...rows], '', factors.length === 0 ? null : factors, null);
  return { ...answer(question), factors: question.factors };
}
