import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { loadBundle } from '../engine/load-bundle';
import { writeDemos } from './write-demos';

const ROOT = join(fileURLToPath(new URL('.', import.meta.url)), '..', '..');

const files = await writeDemos(join(ROOT, 'out'), loadBundle(join(ROOT, 'dist')));
for (const file of files) process.stdout.write(`out/${file}\n`);
