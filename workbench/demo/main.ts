import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { loadBundle } from '../engine/bundle';
import { saveFile } from '../estimate/save-file';
import { libraryUs } from './library-us';
import { makeWorkbook } from './make-workbook';
import { workshopSi } from './workshop-si';

const ROOT = join(fileURLToPath(new URL('.', import.meta.url)), '..', '..');
const OUT = join(ROOT, 'out');

mkdirSync(OUT, { recursive: true });
const bundle = loadBundle(join(ROOT, 'dist'));
for (const job of [libraryUs, workshopSi]) {
  saveFile(join(OUT, job.file), await makeWorkbook(job, bundle));
  process.stdout.write(`out/${job.file}\n`);
}
