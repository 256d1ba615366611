import { metadata } from '../functions/catalogue';

process.stdout.write(`${JSON.stringify(metadata(), null, 2)}\n`);
