import { lines, numberIn } from '../../properties/call';
import { exact, type SourceChecks } from '../check';

/** Days between the end of the work by calendar and its working days. */
function wait(): number {
  const walls = [
    ['Wall', 'Material', 'Area'],
    ['A', 'Red clay brick', 1000],
  ];
  const [line] = lines('SCHEDULE', walls);
  return numberIn(line, 'Calendar days') - Math.ceil(numberIn(line, 'Days'));
}

/** Advice of a textbook on masonry. */
export const masonryTextbook: SourceChecks = {
  document: 'Modern Masonry, a textbook',
  edition: '2022',
  section: '12.5.1, pages 252 and 254',
  checks: [
    {
      what: 'calendar days beyond the days of work: one week before a sample is inspected',
      value: 7,
      unit: 'd',
      mark: 'published',
      ...exact,
      ours: wait,
    },
  ],
};
