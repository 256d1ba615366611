import { metadata } from '../functions/catalogue';

const [address = ''] = process.argv.slice(2);
process.stdout.write(`${JSON.stringify(metadata(address), null, 2)}\n`);
