/** A file that cannot be used, with the reason in words for the person who gave it. */
export class BadFile extends Error {
  override readonly name = 'BadFile';
}
