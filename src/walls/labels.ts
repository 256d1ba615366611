/** The labels of a range's rows, in the order of the rows; each may stand once. */
export class Labels {
  readonly #byRow: string[] = [];
  #last = '';
  /** Made at the first label that does not rise: labels that rise, as those of numbered walls do, cannot repeat. */
  #seen: Set<string> | undefined;

  /**
   * Takes the label of the next row.
   * @param label the label, not empty
   * @param row the row that has it
   * @returns the first row that has it already, or undefined
   */
  take(label: string, row: number): number | undefined {
    const last = this.#last;
    const rises = label.length === last.length ? label > last : label.length > last.length;
    if (this.#seen !== undefined || !rises) {
      const seen = (this.#seen ??= new Set(this.#byRow));
      const before = seen.size;
      seen.add(label);
      if (seen.size === before) return this.#byRow.indexOf(label);
    }
    this.#last = label;
    this.#byRow[row] = label;
    return undefined;
  }
}
