/**
 * What is done with a wall while its zone is washed: yes = covered, and washed afterwards; no = washed with it; only =
 * covered and left unwashed; never = washed, since it cannot be covered.
 */
export const masks = ['yes', 'no', 'only', 'never'] as const;

/** What is done with a wall while its zone is washed. */
export type Mask = (typeof masks)[number];
