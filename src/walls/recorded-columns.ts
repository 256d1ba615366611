/** The columns of recorded work that walls do not have: one range of headings maps both tables. */
export const recordedColumns = ['Date', 'Task', 'Hours', 'Water', 'Cleaner', 'Note'] as const;
