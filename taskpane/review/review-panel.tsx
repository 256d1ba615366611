import type { WallSource } from '../wall-source';
import type { WorkbookPort } from '../workbook/port';

/** What the shell gives to Review. */
export interface ReviewProps {
  readonly port: WorkbookPort;
  readonly source: WallSource | undefined;
  readonly say: (sentence: string) => void;
}

/**
 * Checks the formulas of the workbook.
 * @param props what it works on
 * @returns the panel
 */
export function ReviewPanel({ source }: ReviewProps) {
  return <h2>{source ? 'Review' : 'Review: no wall table chosen'}</h2>;
}
