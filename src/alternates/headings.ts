/** The headings of a table of alternates, in any order. */
export const ALTERNATE_HEADINGS = ['Alternate', 'Wall', 'Column', 'Value'] as const;
