/** Rows and columns of a new sheet: more than the widest formula fills. */
export const ROOM = { rowCount: 1000, columnCount: 80 } as const;
