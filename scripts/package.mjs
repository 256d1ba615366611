import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { parseArgs } from 'node:util';
import { root } from './built.mjs';
import { noticesOf, shippedPackages } from './licence-notices.mjs';

const DAY = 86_400_000;
const FOLDER = 'out/package';
const APP = 'out/washdown-app.zip';
const USE = 'npm run package -- --url https://your.server/washdown';

/** The address of the arguments, as the manifest takes it, or what is wrong with it. */
function readAddress(args) {
  let given;
  try {
    given = parseArgs({ args, options: { url: { type: 'string' } } }).values.url;
  } catch {
    return { wrong: 'There must be the option --url with an address, and nothing else' };
  }
  if (!given) return { wrong: 'The address that the folder will be served from is missing' };
  if (!URL.canParse(given)) return { wrong: `"${given}" is no address` };
  const url = new URL(given);
  if (url.protocol !== 'https:') return { wrong: `Excel takes https addresses alone, not "${given}"` };
  if (/[?#]/.test(given)) return { wrong: `The address "${given}" must have no query and no fragment` };
  if (url.username || url.password)
    return { wrong: 'The address must have no name or password: everybody can read it' };
  return { address: url.href.replace(/\/+$/, '') };
}

function refuse(why) {
  console.error(why);
  process.exit(1);
}

const { address, wrong } = readAddress(process.argv.slice(2));
if (wrong) refuse(`${wrong}: ${USE}`);
const webpack = join(root, 'node_modules/webpack/bin/webpack.js');
if (!existsSync(webpack)) refuse('The packages are missing: npm ci --loglevel=error');
/**
 * A version above that of every earlier package: that of the manifest, then the day and the minute (UTC). Excel and the
 * admin center take a manifest for an update where its version is higher; each part has five digits at most.
 */
function versionNow(now) {
  const [, major, minor] = /<Version>(\d+)\.(\d+)/.exec(readFileSync(join(root, 'manifest.xml'), 'utf8'));
  const year = now.getUTCFullYear();
  const day = Math.floor((now.getTime() - Date.UTC(year, 0, 0)) / DAY);
  return [major, minor, (year % 100) * 1000 + day, now.getUTCHours() * 100 + now.getUTCMinutes()].join('.');
}

const version = versionNow(new Date());
// A build of its own: dist/ keeps the default address.
const { status } = spawnSync(
  process.execPath,
  [
    webpack,
    '--mode',
    'production',
    '--output-path',
    join(root, FOLDER),
    '--env',
    `url=${address}`,
    '--env',
    `version=${version}`,
  ],
  { cwd: root, stdio: ['ignore', 2, 2] },
);
if (status !== 0) process.exit(status ?? 1);
writeFileSync(join(root, FOLDER, 'licences.txt'), noticesOf(shippedPackages(root)));
/** The app package: the unified manifest with the two icons that it names, under the names that it gives them. */
function appPackage() {
  const file = (name) => readFileSync(join(root, FOLDER, name));
  const { outline, color } = JSON.parse(file('manifest.json')).icons;
  return zipSync(Object.fromEntries(['manifest.json', outline, color].map((name) => [name, file(name)])));
}

writeFileSync(join(root, APP), appPackage());
console.log(`${FOLDER}/ is ready to be served at ${address}, as version ${version} of the manifest.

1. Copy what is in it to that web server: ${address}/support.html must open in a browser.
   For Excel on the web the server must allow other origins to read functions.json
   (the header Access-Control-Allow-Origin).
   Headers for an update to arrive at once: Cache-Control: no-cache for the .html files, functions.json and
   manifest.xml. Scripts and style have their content in their address (?v=...) and may be kept for a year:
   Cache-Control: max-age=31536000, immutable.
2. Give ${FOLDER}/manifest.xml to Excel: for everybody through the organisation's admin center, for one team
   in a trusted shared folder, for yourself on the web under Insert, Add-ins, Upload My Add-in.
   ${APP} is the same add-in with the unified manifest, for an admin center that asks for an app package. It takes
   Microsoft 365 on Windows from version 2501, on a Mac from 16.103, or the web; give out one of the two.`);
