import type { WallSource } from './wall-source';
import type { WorkbookPort } from '../workbook/port';

/** What the shell gives to a panel that reads the walls. */
export interface PanelProps {
  readonly port: WorkbookPort;
  readonly source: WallSource;
  /** Speaks a sentence in the pane's live region, and shows it. */
  readonly say: (sentence: string) => void;
}
