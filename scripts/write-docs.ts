import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './docs/markdown';
import { pages } from './docs/pages';

for (const [file, fresh] of Object.entries(pages)) writeFileSync(join(root, file), await fresh());
