/** How a wall is reached. */
export const accessKinds = ['ground', 'scaffold', 'lift', 'ladder', 'suspended'] as const;

/** A way to reach a wall. */
export type AccessKind = (typeof accessKinds)[number];
