import { exact, factor, type SourceChecks } from '../check';

/** Advice of a textbook on masonry. */
export const masonryTextbook: SourceChecks = {
  document: 'Masonry textbook quoting BIA',
  edition: '2022',
  section: 'cleaning',
  checks: [
    {
      what: 'least wait between sample and work, one week',
      value: 7,
      unit: 'd',
      mark: 'published',
      ...exact,
      ours: () => factor('sample.wait'),
    },
  ],
};
