/** The groups of a form of the factors, by what an estimator looks for, and their titles; the order of the form. */
export const factorGroups = {
  crew: 'Crew and shift',
  prices: 'Prices and rental',
  markUps: 'Markups, minimum price and price range',
  label: 'Cleaner label',
  site: 'Site and weather',
  rates: 'Scraping, applying and scrubbing',
  rinse: 'Rinse and nozzle',
  preWet: 'Pre-wet and wetting below',
  masking: 'Masking and glass',
  access: 'Access and scaffold',
  samples: 'Samples, ages and re-clean',
  residue: 'Residue and mortar',
  records: 'Rates from recorded work',
} as const;

/** The id of a group. */
export type FactorGroupId = keyof typeof factorGroups;
