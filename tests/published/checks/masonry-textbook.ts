import { exact, factor, type SourceChecks } from '../check';

/** Advice of a textbook on masonry. */
export const masonryTextbook: SourceChecks = {
  document: 'Modern Masonry, a textbook',
  edition: '2022',
  section: '12.5.1, pages 252 and 254',
  checks: [
    {
      what: 'least wait before a sample is inspected, one week',
      value: 7,
      unit: 'd',
      mark: 'published',
      ...exact,
      ours: () => factor('sample.wait'),
    },
  ],
};
