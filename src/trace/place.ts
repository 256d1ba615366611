/** Whose the lines of a record are. */
export interface Place {
  /** What `~` stands for: `#` where the record is that of a row, `@` of a zone, nothing of the job. */
  readonly sign: '' | '@' | '#';
  readonly zone?: Spot;
  readonly row?: Spot & { readonly number: number };
}

/** A zone or a row: what the names of its numbers end in, and what a person calls it. */
export interface Spot {
  readonly suffix: string;
  readonly label: string;
}

/** The job as a whole. */
export const WHOLE_JOB: Place = { sign: '' };

/**
 * Puts names in the place of the signs.
 * @param text symbols, with `@` for the zone at hand and `#` for the wall row at hand
 * @param place whose the symbols are
 * @returns the symbols as words
 * @throws {Error} where there is no zone or no row at hand
 */
export function namedIn(text: string, { zone, row }: Place): string {
  return text.replace(/[@#]/g, (sign) => {
    const spot = sign === '@' ? zone : row;
    if (!spot)
      throw new Error(`"${text}" speaks of a ${sign === '@' ? 'zone' : 'row'}, and none is at hand.`);
    return spot.suffix;
  });
}
