/** A label that stands more than once. */
export interface Repeat {
  readonly label: string;
  /** The row that has it once more. */
  readonly row: number;
  /** The first row that has it. */
  readonly first: number;
}

/** The labels of a range's rows, in the order of the rows; each may stand once. */
export class Labels {
  readonly #labels: string[] = [];
  readonly #rows: number[] = [];
  #last = '';
  /** Labels that rise, as those of numbered walls do, cannot repeat. */
  #rise = true;

  /** Whether no row was taken. */
  get areNone(): boolean {
    return this.#labels.length === 0;
  }

  /**
   * Takes the label of the next row.
   * @param label the label
   * @param row the row that has it
   */
  take(label: string, row: number): void {
    this.#labels.push(label);
    this.#rows.push(row);
    if (!this.#rise) return;
    const last = this.#last;
    this.#rise = label.length === last.length ? label > last : label.length > last.length;
    this.#last = label;
  }

  /**
   * Finds the labels that stand more than once.
   * @returns each row that has a label once more, in the order of the rows
   */
  repeats(): Repeat[] {
    // One set of all of them at the end takes less than a look-up at each row.
    if (this.#rise || new Set(this.#labels).size === this.#labels.length) return [];
    const firsts = new Map<string, number>();
    return this.#labels.flatMap((label, index) => {
      const row = this.#rows[index] ?? NaN;
      const first = firsts.get(label);
      if (first !== undefined) return [{ label, row, first }];
      firsts.set(label, row);
      return [];
    });
  }
}
