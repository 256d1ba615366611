/** Chance from a seed: quick, and the same again for the same seed. */
export class Random {
  /** @param state the seed, a whole number */
  constructor(private state: number) {}

  /** A number from 0 to below 1, by a 32-bit mixing step. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }

  /** A whole number from 0 to below `count`. */
  below(count: number): number {
    return Math.floor(this.next() * count);
  }

  /** One of a list. */
  of<T>(list: readonly T[]): T {
    return list[this.below(list.length)] as T;
  }

  /** True in so many of a hundred cases. */
  percent(share: number): boolean {
    return this.next() * 100 < share;
  }
}
