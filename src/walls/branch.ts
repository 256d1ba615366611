/** A tree in which rows part by their cells, a column a level. */
export class Branch<Leaf> {
  /** What stands where no column is left. */
  leaf: Leaf | undefined;
  #next: Map<unknown, Branch<Leaf>> | undefined;
  #lastCell: unknown;
  #last: Branch<Leaf> | undefined;

  /**
   * Where rows with a cell go on.
   * @param cell the cell of the next column
   * @returns the branch of that cell, a new one where it was not met before
   */
  at(cell: unknown): Branch<Leaf> {
    // Rows that follow each other mostly say the same, so that many branches have one way on and need no map.
    if (cell === this.#lastCell && this.#last) return this.#last;
    if (this.#last) this.#next ??= new Map([[this.#lastCell, this.#last]]);
    const next = this.#next?.get(cell) ?? new Branch<Leaf>();
    this.#next?.set(cell, next);
    this.#lastCell = cell;
    return (this.#last = next);
  }
}
