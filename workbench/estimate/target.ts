import {
  accessSync,
  constants,
  existsSync,
  lstatSync,
  openSync,
  readSync,
  closeSync,
  realpathSync,
  statSync,
  type Stats,
} from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';

/** A file that cannot be written, with what to do. */
export class BadTarget extends Error {
  override readonly name = 'BadTarget';
}

const ZIP = 'PK';
const WRITE_BITS = 0o222;

/** What a person can do about an error of the system. */
const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'you may not write there. Choose another folder, or get permission.',
  EPERM: 'you may not write there. Choose another folder, or get permission.',
  EROFS: 'the disk is read-only. Choose another folder.',
  ENOSPC: 'the disk is full. Make room, or choose another disk.',
  EDQUOT: 'your disk quota is used up. Make room, or choose another disk.',
  EFBIG: 'the file is larger than may be written there. Choose another disk.',
  ENAMETOOLONG: 'the name is too long. Choose a shorter one.',
  ENOENT: 'the folder is not there. Make it first, or choose another.',
  ENOTDIR: 'a part of the path is a file, not a folder. Choose another path.',
  ELOOP: 'the path has links that lead in a circle. Choose another.',
  EISDIR: 'it is a folder. Name a file in it.',
  EBUSY: 'another program holds it. Close it there and try again.',
  EMFILE: 'too many files are open. Close other programs and try again.',
  EIO: 'the disk has an error. Choose another disk.',
};

/**
 * What went wrong with a file, in words.
 * @param cause what the system threw
 * @returns for example `the disk is full. Make room, or choose another disk.`
 */
export function reasonOf(cause: unknown): string {
  return REASONS[codeOf(cause)] ?? (cause instanceof Error ? cause.message : String(cause));
}

function codeOf(cause: unknown): string {
  return cause instanceof Error && 'code' in cause ? String(cause.code) : '';
}

function found(path: string): Stats | undefined {
  try {
    return lstatSync(path);
  } catch (cause) {
    if (codeOf(cause) === 'ENOENT') return undefined;
    throw cause;
  }
}

function leadsTo(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    throw new BadTarget(`${path} is a link that leads nowhere. Remove it, or choose another name.`);
  }
}

function startOf(path: string): string {
  const file = openSync(path, 'r');
  try {
    const bytes = Buffer.alloc(ZIP.length);
    return bytes.subarray(0, readSync(file, bytes)).toString('latin1');
  } finally {
    closeSync(file);
  }
}

function checkEnding(path: string, ending: string): void {
  if (extname(path).toLowerCase() === ending) return;
  throw new BadTarget(
    `${path} does not end in ${ending}, and that is what the workbook is. Accepted: a name that ends in ${ending}.`,
  );
}

function checkFolder(path: string): void {
  accessSync(dirname(path), constants.W_OK);
  if (!statSync(dirname(path)).isDirectory()) throw Object.assign(new Error(), { code: 'ENOTDIR' });
}

// Whoever may do everything may write what is marked as read-only too, and should not.
function isReadOnly(path: string, file: Stats): boolean {
  if ((file.mode & WRITE_BITS) === 0) return true;
  try {
    accessSync(path, constants.W_OK);
    return false;
  } catch (cause) {
    if (['EACCES', 'EPERM', 'EROFS'].includes(codeOf(cause))) return true;
    throw cause;
  }
}

/**
 * Whether two paths lead to one file.
 * @param a a path
 * @param b another
 * @returns true also over links
 */
export function sameFile(a: string, b: string): boolean {
  if (!existsSync(a) || !existsSync(b)) return false;
  const [one, other] = [statSync(a), statSync(b)];
  return one.dev === other.dev && one.ino === other.ino;
}

/**
 * Makes sure that a workbook may be written to a path: nothing is there, or a workbook that may be replaced.
 * @param path the path
 * @param ending what the name of such a workbook ends in
 * @returns the file itself, where the path is a link to it
 * @throws {BadTarget} where it may not, with what to do
 */
export function checkTarget(path: string, ending: string): string {
  try {
    return checked(path, ending);
  } catch (cause) {
    if (cause instanceof BadTarget) throw cause;
    throw new BadTarget(`${path} cannot be written: ${reasonOf(cause)}`);
  }
}

function checked(path: string, ending: string): string {
  checkEnding(path, ending);
  const there = found(path);
  const target = there?.isSymbolicLink() ? leadsTo(path) : path;
  checkFolder(target);
  if (!there) return target;
  checkEnding(target, ending);
  const file = statSync(target);
  if (file.isDirectory()) throw new BadTarget(`${path} is a folder. Name a file in it.`);
  if (!file.isFile()) throw new BadTarget(`${path} is a device or a pipe. Accepted: the name of a file.`);
  if (isReadOnly(target, file)) {
    throw new BadTarget(`${path} is read-only. Have that changed, or choose another name.`);
  }
  if (file.size > 0 && startOf(target) !== ZIP) {
    throw new BadTarget(`${path} is there and is not a workbook. Choose another name.`);
  }
  return target;
}

/**
 * The file beside a workbook by which a spreadsheet shows that it has it open.
 * @param path the workbook
 * @returns its name, undefined where there is none
 */
export function lockBeside(path: string): string | undefined {
  const name = basename(path);
  return [`~$${name}`, `.~lock.${name}#`].find((lock) => existsSync(join(dirname(path), lock)));
}
