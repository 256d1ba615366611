import { alternateSteps, type AlternatesResult } from '../../src/alternates/alternates';
import { inSlices, type Turns } from '../shared/slices';
import { readSource, type WallSource } from '../shared/wall-source';
import type { WorkbookPort } from '../workbook/port';

/**
 * What the alternates of the bid come to, so that the pane answers in between.
 * @param port the workbook
 * @param source where walls, factors and headings stand
 * @param table name of the table of alternates; empty for the choices that are still open
 * @param turns lets others work in between
 * @param signal ends the work early
 * @returns the lines; undefined where the work was ended
 * @throws {WashdownError} naming what cannot be read
 */
export async function workOutAlternates(
  port: WorkbookPort,
  source: WallSource,
  table: string,
  turns: Turns,
  signal: AbortSignal,
): Promise<AlternatesResult | undefined> {
  const [ranges, alternates] = await Promise.all([
    readSource(port, source),
    table === '' ? undefined : port.readTable(table),
  ]);
  await turns.pause();
  const steps = alternateSteps({ ...ranges, alternates, zone: '' });
  return inSlices(steps, turns, signal, () => undefined);
}
