import { number } from '../../properties/call';
import { exact, factor, printed, type Mark, type PublishedCheck, type SourceChecks } from '../check';
import { byFormula, one } from '../second-library';

const types = [
  { type: 'M', psi: 2500, mpa: 17.2, effort: 1.8257 },
  { type: 'S', psi: 1800, mpa: 12.4, effort: 1.5492 },
  { type: 'N', psi: 750, mpa: 5.2, effort: 1 },
  { type: 'O', psi: 350, mpa: 2.4, effort: 0.6831 },
] as const;

/** Hours of scraping 100 ft2 of brick laid in a mortar. */
function scraping(mortar: string): number {
  const walls = [
    ['Wall', 'Material', 'Area', 'Mortar', 'Residue'],
    ['A', 'Red clay brick', 100, mortar, 'moderate'],
  ];
  return number('LABORHOURS', walls, null, null, 'scrape');
}

const published: Mark = 'published';

/** The property specification, and what scraping makes of it. */
export const astmC270: SourceChecks = {
  document: 'ASTM C270, Mortar for Unit Masonry',
  edition: 'as quoted in Preservation Brief 2 of the National Park Service',
  section: 'mortar types and their strengths',
  checks: [
    ...types.map(({ type, psi }): PublishedCheck => ({
      what: `strength of Type ${type}`,
      value: psi,
      unit: 'psi',
      mark: published,
      ...exact,
      reading: true,
      ours: () => factor(`mortar.${type}.strength`),
    })),
    ...types.map(({ type, psi, mpa }): PublishedCheck => ({
      what: `strength of Type ${type} in SI units`,
      value: mpa,
      unit: 'MPa',
      mark: 'from memory',
      ...printed(1),
      reading: true,
      ours: () => factor(`mortar.${type}.strength`, 'SI') / 1000,
      second: {
        by: 'the strength in psi, converted by mathjs',
        value: () => (psi * one('psi', 'kPa')) / 1000,
      },
    })),
    ...types.map(({ type, psi, effort }): PublishedCheck => ({
      what: `scraping effort of Type ${type} to Type N: square root of the ratio of strengths`,
      value: effort,
      unit: '1',
      mark: 'computed',
      ...printed(4),
      ours: () => scraping(type) / scraping('N'),
      second: byFormula(`sqrt(${String(psi)} / 750)`, 'mathjs, from the strengths'),
    })),
  ],
};
