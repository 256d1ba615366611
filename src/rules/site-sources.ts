import { sources, type Source } from './sources';

/** The sources that the cautions and steps for the crew rest on besides those of the estimate. */
const ofTheSite = {
  'regional-pressure': {
    document: 'Regional brick association text on pressure cleaning of new brick',
    edition: 'not stated',
    section: 'pressure',
    used: '400 to 800 psi for new brick',
    kind: 'published',
  },
  'dilution-article': {
    document: 'Article quoting a brick producer, Australian practice',
    edition: 'not stated',
    section: 'dilution',
    used: 'light brick 1:20, dark brick 1:10 at most; dwell 3 to 6 min',
    kind: 'published',
  },
  'tek8-4a': {
    document: 'NCMA TEK 8-4A, Cleaning Concrete Masonry',
    edition: '2005',
    section: 'cleaning methods',
    used: 'aggressive cleaning strips the paste film: treat the whole wall alike, special care for mixed materials',
    kind: 'published',
  },
  'acid-dilution-1971': {
    document: 'Trade magazine on cleaning brickwork',
    edition: '1971',
    section: 'mixing',
    used: 'acid is poured into water; its strength is superseded by BIA Technical Note 20',
    kind: 'published',
  },
  'cfr-403.5': {
    document: '40 CFR 403.5(b), National Pretreatment Standards',
    edition: 'not stated',
    section: 'prohibited discharges',
    used: 'nothing below pH 5.0 into a sewer whose works is not designed for it',
    kind: 'published',
  },
  'cfr-261.22': {
    document: '40 CFR 261.22, Characteristic of corrosivity',
    edition: 'not at hand',
    section: '',
    used: 'waste at pH 2 or less, or 12.5 or more, is corrosive waste',
    kind: 'from memory',
  },
  'construction-permit': {
    document: 'US construction general permit for storm water',
    edition: 'not at hand',
    section: 'allowable discharges other than storm water',
    used: 'wash-down water without soaps, solvents and detergents only: ask the local authority',
    kind: 'from memory',
  },
  'osha-pel': {
    document: 'OSHA permissible exposure limits',
    edition: 'not stated',
    section: 'hydrogen chloride; hydrogen fluoride',
    used: 'hydrogen chloride 5 ppm at no time exceeded; hydrogen fluoride 3 ppm over 8 h',
    kind: 'published',
  },
  'cfr-1926.50': {
    document: '29 CFR 1926.50(g), Medical services and first aid',
    edition: 'not stated',
    section: 'corrosive materials',
    used: 'drenching of eyes and body at hand where corrosive materials are used',
    kind: 'published',
  },
  'z358.1': {
    document: 'ANSI Z358.1, Emergency Eyewash and Shower Equipment',
    edition: 'as quoted in a secondary source',
    section: 'flow and place',
    used: 'eyewash within 10 s, flowing for 15 min',
    kind: 'published',
  },
  'cfr-1926.451': {
    document: '29 CFR 1926.451, Scaffolds',
    edition: 'not stated',
    section: 'capacity; fall protection',
    used: 'scaffold carries 4 times its load; fall protection above 10 ft',
    kind: 'published',
  },
  'cfr-1926.453': {
    document: '29 CFR 1926.453, Aerial lifts',
    edition: 'not stated',
    section: 'extensible and articulating boom platforms',
    used: 'lanyard tied to the boom or basket',
    kind: 'published',
  },
  'cfr-1926.1153': {
    document: '29 CFR 1926.1153, Respirable crystalline silica',
    edition: 'not at hand',
    section: 'permissible exposure limit',
    used: '50 ug/m3 over 8 h',
    kind: 'from memory',
  },
  'trade-magazine': {
    document: 'Trade magazine on masonry cleaning',
    edition: '1997',
    section: 'block beside brick',
    used: 'acid cleaner for brick can etch adjoining block; protect block below',
    kind: 'published',
  },
} as const satisfies Record<string, Source>;

/** Every source of the estimate and of the site, by id. They stand apart so that the functions need not carry both. */
export const siteSources = { ...sources, ...ofTheSite };

/** The id of a source of the estimate or of the site. */
export type SiteSourceId = keyof typeof siteSources;
