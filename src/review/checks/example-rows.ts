import type { Check } from '../finding';

const NAMED = 5;

/** Rows that show what the columns take, and are no walls of the job. */
export const exampleRowsLeft: Check = ({ examples }) => {
  if (examples === undefined || examples.labels.length === 0) return [];
  const { labels, areAll } = examples;
  const count = `${String(labels.length)} example ${labels.length === 1 ? 'row' : 'rows'}`;
  const more = labels.length > NAMED ? ` and ${String(labels.length - NAMED)} more` : '';
  return [
    {
      check: 'example rows',
      what: areAll
        ? `Every wall row is an example, ${count}: what is worked out is not a bid`
        : `${count} left out of the job`,
      where: labels.slice(0, NAMED).join('; ') + more,
      why: 'A label that starts with "Example:" marks a row that shows what the columns take; it counts only while no wall of yours is there',
      todo: 'Delete the row, or give it a label and numbers of your own',
      source: 'rows',
    },
  ];
};
