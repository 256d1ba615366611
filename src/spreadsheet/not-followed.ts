/** Raised where a formula cannot be worked out here; its message says why, and the formula is listed as not checked. */
export class NotFollowed extends Error {
  override readonly name = 'NotFollowed';
}
