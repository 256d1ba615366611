import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const NOTICE = /^(?:licen[cs]e|copying|notice)(?:[.-].*)?$/i;
const LINE = '-'.repeat(100);

/**
 * The packages that files belong to.
 * @param {string} root folder of the project
 * @param {readonly string[]} files paths as a bundler lists them
 * @returns {string[]} folders of packages, each once
 */
export function packagesOf(root, files) {
  const folders = files.flatMap((file) => {
    const found = /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(resolve(root, file).replaceAll('\\', '/'));
    return found ? [found[1]] : [];
  });
  return [...new Set(folders)].sort();
}

/**
 * The packages that the add-in itself ships: all that are not for development alone.
 * @param {string} root folder of the project
 * @returns {string[]} their folders
 */
export function shippedPackages(root) {
  const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
  return Object.entries(packages)
    .filter(([path, { dev }]) => path !== '' && dev !== true)
    .map(([path]) => join(root, path));
}

/** The texts that a package wants to be passed on. */
function noticeOf(folder) {
  const {
    name,
    version,
    license = 'none stated',
  } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const texts = readdirSync(folder)
    .filter((file) => NOTICE.test(file))
    .sort()
    .map((file) => readFileSync(join(folder, file), 'utf8').trim());
  const said =
    texts.length > 0 ? texts : [`The package brings no text of its licence. It states: ${license}`];
  return { title: `${name} ${version} (${license})`, text: said.join('\n\n') };
}

/**
 * The licence notices of packages.
 * @param {readonly string[]} folders folders of the packages
 * @returns {string} one text, a package after the other
 */
export function noticesOf(folders) {
  const notices = folders
    .filter((folder) => existsSync(join(folder, 'package.json')))
    .map(noticeOf)
    .sort((a, b) => a.title.localeCompare(b.title, 'en'));
  const unique = [...new Map(notices.map((each) => [each.title, each])).values()];
  const head = `This contains ${unique.length} packages of others, under these licences.`;
  return (
    [head, ...unique.map(({ title, text }) => `${LINE}\n${title}\n${LINE}\n${text}`)].join('\n\n') + '\n'
  );
}
