import type { SourceKind } from './source-kinds';

/** A document, or the lack of one, that a rule or factor rests on. */
export interface Source {
  readonly document: string;
  readonly edition: string;
  readonly section: string;
  /** What this project takes from it. */
  readonly used: string;
  readonly kind: SourceKind;
}

/** Every source that a rule, factor, material or caution refers to, by id. */
export const sources = {
  tn20: {
    document: 'BIA Technical Note 20, Cleaning Brickwork',
    edition: 'current',
    section: 'summary',
    used: 'gentlest effective method; saturate before cleaner; work from the top down; sample area 20 ft2 looked at when dry; at least 7 days old; no unbuffered muriatic acid',
    kind: 'published',
  },
  'tn20-older': {
    document: 'BIA Technical Note 20, older table of brick categories',
    edition: 'not at hand',
    section: 'table of brick categories',
    used: 'which brick takes which cleaner',
    kind: 'from memory',
  },
  'tek8-4a': {
    document: 'NCMA TEK 8-4A, Cleaning Concrete Masonry',
    edition: '2005',
    section: 'cleaning methods',
    used: 'aggressive cleaning strips the paste film: treat the whole wall alike, special care for mixed materials',
    kind: 'published',
  },
  'stone-producer': {
    document: 'Limestone producer page quoting the stone institute',
    edition: 'not stated',
    section: 'pressure washing',
    used: 'limestone: at most 1,200 psi, 45 degree fan, at least 6 in.',
    kind: 'published',
  },
  'gsa-0451004s': {
    document: 'GSA technical procedure 0451004S',
    edition: 'not stated',
    section: 'pressure',
    used: 'low pressure for masonry 100 to 400 psi',
    kind: 'published',
  },
  'regional-pressure': {
    document: 'Regional brick association text on pressure cleaning of new brick',
    edition: 'not stated',
    section: 'pressure',
    used: '400 to 800 psi for new brick',
    kind: 'published',
  },
  c270: {
    document: 'ASTM C270, Mortar for Unit Masonry',
    edition: 'as quoted in a secondary source',
    section: 'property specification, 28-day strength',
    used: 'M 2500, S 1800, N 750, O 350 psi',
    kind: 'published',
  },
  c67: {
    document: 'ASTM C67, Sampling and Testing Brick and Structural Clay Tile',
    edition: 'definition as quoted in a secondary source',
    section: 'initial rate of absorption',
    used: 'initial rate of absorption: grams a minute on 30 in2',
    kind: 'published',
  },
  'sqrt-time': {
    document:
      'Hall and Hoff, Water Transport in Brick, Stone and Concrete; square-root-of-time law also in ASTM C1585',
    edition: 'not stated',
    section: 'sorptivity',
    used: 'uptake of a porous face i = S sqrt(t)',
    kind: 'published',
  },
  'nozzle-number': {
    document: 'Nozzle numbering convention, spray nozzle charts',
    edition: 'not stated',
    section: 'flow at pressure',
    used: 'flow = number * sqrt(pressure / 4000 psi) gal/min',
    kind: 'published',
  },
  aci305: {
    document:
      'ACI 305R, Hot Weather Concreting; Uno, Plastic Shrinkage Cracking and Evaporation Formulas, ACI Materials Journal',
    edition: '1998',
    section: 'evaporation equation',
    used: 'evaporation of a wet film; for level concrete, about 40 % either way: on a wall it is an extrapolation',
    kind: 'published',
  },
  sp811: {
    document: 'NIST Special Publication 811, Guide for the Use of the International System of Units',
    edition: '2008',
    section: 'appendix B.8',
    used: 'conversion factors',
    kind: 'published',
  },
  'molar-mass': {
    document: 'Molar masses and stoichiometry of HCl, NaHCO3 and Na2CO3',
    edition: '',
    section: '',
    used: 'alkali that neutralises the acid of a cleaner',
    kind: 'published',
  },
  'trade-site': {
    document: 'Trade site on masonry cleaning',
    edition: 'not stated',
    section: 'weather',
    used: 'air above 40 degF and staying so through drying',
    kind: 'published',
  },
  'trade-magazine': {
    document: 'Trade magazine on masonry cleaning',
    edition: '1997',
    section: 'block beside brick',
    used: 'acid cleaner for brick can etch adjoining block; protect block below',
    kind: 'published',
  },
  'dilution-article': {
    document: 'Article quoting a brick producer, Australian practice',
    edition: 'not stated',
    section: 'dilution',
    used: 'light brick 1:20, dark brick 1:10 at most; dwell 3 to 6 min',
    kind: 'published',
  },
  'masonry-textbook': {
    document: 'Masonry textbook quoting BIA',
    edition: '2022',
    section: 'cleaning',
    used: 'blasting advised against; at least 1 week between sample and work',
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
  practice: {
    document: 'Common practice of the trade',
    edition: '',
    section: '',
    used: 'dwell 3 to 5 min; two passes of plain water or more; rinse from the top down; what cannot be kept apart is cleaned as its most sensitive material allows',
    kind: 'common practice',
  },
  memory: {
    document: 'From memory',
    edition: '',
    section: '',
    used: 'values known but not read in a source at hand',
    kind: 'from memory',
  },
  estimate: {
    document: 'Our own estimate',
    edition: '',
    section: '',
    used: "starting rates and allowances, to be replaced by the user's own",
    kind: 'assumption',
  },
  geometry: {
    document: 'Geometry and arithmetic',
    edition: '',
    section: '',
    used: 'areas, perimeters, sums and shares',
    kind: 'computed',
  },
  rows: {
    document: 'The rows of wall data',
    edition: '',
    section: '',
    used: 'what the user measured or stated',
    kind: 'input',
  },
  factors: {
    document: 'The factor range of the workbook',
    edition: '',
    section: '',
    used: 'values that the user gave in place of the starting values',
    kind: 'override',
  },
} as const satisfies Record<string, Source>;

/** The id of a source. */
export type SourceId = keyof typeof sources;
