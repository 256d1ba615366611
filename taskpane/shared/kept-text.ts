import type { CellContent, PartName, WorkbookPort } from '../workbook/port';

/** The sheet that takes the pane's notes where the workbook does not keep them itself. */
export const NOTES_SHEET = 'Washdown notes';

const HEADING: readonly CellContent[] = ['Kept for', 'Text (the pane reads it back)'];
// A cell holds at most 32,767 characters.
const CHARACTERS_A_CELL = 30_000;

/**
 * The text kept under a name, from the workbook's own store or from the notes sheet.
 * @param port the workbook
 * @param name what it was kept for
 * @returns the text, or undefined where there is none
 */
export async function readKept(port: WorkbookPort, name: PartName): Promise<string | undefined> {
  const part = await port.readPart(name);
  if (part !== undefined) return part;
  const lines = (await notes(port)).filter(([owner]) => owner === name);
  return lines.length > 0 ? lines.map(([, text]) => String(text)).join('') : undefined;
}

/**
 * Keeps a text in the workbook; on the notes sheet where the user has agreed to one.
 * @param port the workbook
 * @param name what it is kept for
 * @param text the text
 * @returns false where nothing keeps it: the caller says so and offers `keepOnSheet`
 */
export async function keep(port: WorkbookPort, name: PartName, text: string): Promise<boolean> {
  if (await port.writePart(name, text)) return true;
  if (!(await port.sheets()).includes(NOTES_SHEET)) return false;
  await keepOnSheet(port, name, text);
  return true;
}

/**
 * Keeps a text on the notes sheet, which is added where it is missing.
 * @param port the workbook
 * @param name what it is kept for
 * @param text the text
 */
export async function keepOnSheet(port: WorkbookPort, name: PartName, text: string): Promise<void> {
  const before = await notes(port);
  const lines: (readonly CellContent[])[] = before.filter(([owner]) => owner !== name && owner !== '');
  for (let start = 0; start < text.length; start += CHARACTERS_A_CELL) {
    lines.push([name, text.slice(start, start + CHARACTERS_A_CELL)]);
  }
  while (lines.length < before.length) lines.push(['', '']);
  await port.write([{ sheet: NOTES_SHEET, address: 'A1', rows: [HEADING, ...lines], heading: true }]);
}

async function notes(port: WorkbookPort): Promise<CellContent[][]> {
  if (!(await port.sheets()).includes(NOTES_SHEET)) return [];
  const last = 1000;
  const rows = await port.readRange({ sheet: NOTES_SHEET, address: `A2:B${String(last)}` });
  let end = rows.length;
  while (end > 0 && rows[end - 1]?.[0] === '') end--;
  return rows.slice(0, end);
}
