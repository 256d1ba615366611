import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Bundle } from '../engine/bundle';
import { saveFile } from '../estimate/save-file';
import { libraryUs } from './library-us';
import { makeWorkbook } from './make-workbook';
import { workshopSi } from './workshop-si';

/**
 * Writes the demo workbooks.
 * @param folder where they go
 * @param bundle the built functions
 * @returns the names of the files
 */
export async function writeDemos(folder: string, bundle: Bundle): Promise<string[]> {
  mkdirSync(folder, { recursive: true });
  const jobs = [libraryUs, workshopSi];
  for (const job of jobs) saveFile(join(folder, job.file), await makeWorkbook(job, bundle));
  return jobs.map(({ file }) => file);
}
