import type { WallSource } from '../shared/wall-source';
import type { WorkbookPort } from '../workbook/port';

/** What the shell gives to Set up. */
export interface SetUpProps {
  readonly port: WorkbookPort;
  readonly source: WallSource | undefined;
  readonly say: (sentence: string) => void;
  /** Takes the wall table that the other panels work on. */
  readonly choose: (source: WallSource) => void;
}
