import { areaOf } from '../../workbook/block-area';
import type { Place, WorkbookPort } from '../../workbook/port';

/**
 * The formulas in cells of one sheet.
 * @param port the workbook
 * @param places the cells, all of one sheet
 * @returns the formulas by address; a cell without one is left out
 */
export async function formulasIn(port: WorkbookPort, places: readonly Place[]): Promise<Map<string, string>> {
  const found = new Map<string, string>();
  const [first] = places;
  if (!first) return found;
  for await (const block of port.scan(() => undefined, new AbortController().signal)) {
    if (block.sheet !== first.sheet) continue;
    for (const { address } of places) {
      const { top, left } = areaOf(address);
      const content = block.formulas[top - block.row]?.[left - block.column];
      const value = block.values[top - block.row]?.[left - block.column];
      if (typeof content === 'string' && content.startsWith('=') && content !== value)
        found.set(address, content);
    }
  }
  return found;
}
