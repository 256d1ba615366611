import type { WallSource } from '../wall-source';
import type { WorkbookPort } from '../workbook/port';

/** What the shell gives to Set up. */
export interface SetUpProps {
  readonly port: WorkbookPort;
  readonly source: WallSource | undefined;
  readonly say: (sentence: string) => void;
  /** Takes the wall table that the other panels work on. */
  readonly choose: (source: WallSource) => void;
}

/**
 * Puts tables and formulas into the workbook.
 * @param props what it works on
 * @returns the panel
 */
export function SetUpPanel({ source }: SetUpProps) {
  return <h2>{source ? 'Set up' : 'Start here'}</h2>;
}
