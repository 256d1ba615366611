import type { SourceKind } from './source-kinds';

/** A document, or the lack of one, that a rule or factor rests on. */
export interface Source {
  readonly document: string;
  readonly edition: string;
  readonly section: string;
  /** Where it, or a copy or a page that quotes it, was read; left out where it was not read, or is no document. */
  readonly address?: string;
  /** What this project takes from it. */
  readonly used: string;
  readonly kind: SourceKind;
}

/** Every source that a rule, factor, material or caution refers to, by id. */
export const sources = {
  tn20: {
    document: 'BIA Technical Note 20, Cleaning Brickwork',
    edition: 'June 2006, as transcribed',
    section: 'summary of recommendations',
    address:
      'docplayer.net/940842-1850-centennial-park-drive-reston-virginia-20191-www-gobrick-com-703-620-0010.html',
    used: 'gentlest effective method; saturate first; top down; 20 ft2 sample looked at dry; 7 days old; no unbuffered acid',
    kind: 'published',
  },
  'tn20-older': {
    document: 'BIA Technical Note 20, older table of brick categories',
    edition: 'not at hand',
    section: 'table of brick categories',
    used: 'which brick takes which cleaner',
    kind: 'from memory',
  },
  'stone-producer': {
    document: 'Limestone producer quoting the stone institute',
    edition: 'not stated',
    section: 'pressure washing',
    address: 'iliai.com/pages/Cleaning_Indiana_Limestone',
    used: 'limestone: at most 1,200 psi, 45 degree fan, at least 6 in.',
    kind: 'published',
  },
  'gsa-0451004s': {
    document: 'GSA technical procedure 0440001P, Removing Dirt from Stone Masonry by Pressure Washing',
    edition: 'June 2012',
    section: 'pressures of the pump',
    address: 'gsa.gov/portal/content/111830',
    used: 'a range: 100 to 400 psi as low pressure, for older and delicate surfaces; 500 to 1,000 psi for typical masonry',
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
    edition: 'as quoted in a secondary source',
    section: 'initial rate of absorption',
    used: 'initial rate of absorption: grams a minute on 30 in2',
    kind: 'published',
  },
  'sqrt-time': {
    document: 'Hall and Hoff, Water Transport in Brick, Stone and Concrete; ASTM C1585',
    edition: 'not stated',
    section: 'sorptivity',
    used: 'uptake of a porous face i = S sqrt(t)',
    kind: 'published',
  },
  'nozzle-number': {
    document: 'Nozzle numbering convention, spray nozzle charts',
    edition: 'not stated',
    section: 'flow at pressure, coverage',
    used: 'flow = number * sqrt(pressure / 4000 psi) gal/min; fan width',
    kind: 'published',
  },
  aci305: {
    document: 'ACI 305R, Hot Weather Concreting; Uno, ACI Materials Journal',
    edition: '1998',
    section: 'evaporation equation',
    used: 'evaporation of a wet film, about 40 % either way',
    kind: 'published',
  },
  sp811: {
    document: 'NIST SP 811, Guide for the Use of the SI',
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
    edition: 'as read in 2026',
    section: 'masonry cleaning',
    address: 'constructionmentor.net/masonry-cleaning',
    used: 'air above 40 degF until dry; cleaner put on with a brush or at 50 psi or less',
    kind: 'published',
  },
  practice: {
    document: 'Common practice of the trade',
    edition: '',
    section: '',
    used: 'dwell 3 to 5 min; two passes of plain water; the material that tolerates least governs a zone',
    kind: 'common practice',
  },
  memory: {
    document: 'From memory',
    edition: '',
    section: '',
    used: 'known, not read in a source at hand',
    kind: 'from memory',
  },
  estimate: {
    document: 'Our own estimate',
    edition: '',
    section: '',
    used: 'starting values, for you to replace',
    kind: 'assumption',
  },
  'masonry-textbook': {
    document: 'Modern Masonry, a textbook',
    edition: '2022',
    section: '12.5.1, pages 252 and 254',
    address: 'g-wonlinetextbooks.com/modern-masonry-2022/268',
    used: 'blasting advised against; at least 1 week before a sample is inspected',
    kind: 'published',
  },
  'ufgs-04900': {
    document: 'UFGS 04900, Masonry Restoration and Cleaning',
    edition: 'as stored',
    section: '3.2.1 and 3.2.2',
    address: 'ufgscriteriadocreport.tpub.com/04900/049000014.htm',
    used: 'air above 40 degF until dry and at least 7 days after; no acid on limestone, marble, concrete and other calcareous masonry',
    kind: 'published',
  },
  'guide-section-brick': {
    document: 'Guide section on the maintenance of brick and terra cotta, and its sister on limestone',
    edition: 'as stored',
    section: '1.02, definitions: cold and hot weather',
    address: 'studylib.net/doc/7729584',
    used: 'a face at 90 degF or more is too hot to clean, one at 40 degF or less too cold',
    kind: 'published',
  },
  'masonry-2007': {
    document: 'Masonry Magazine, New Rules for Cleaning',
    edition: 'June 2007',
    section: 'page 28, rule 4',
    address: 'masonrymagazine.com/?pageID=32390',
    used: 'clay brick is cleaned at 14 to 28 days, block at 7 to 21, strong mortar and grout at 3 to 7; after 60 days smears of strong mortar stayed on',
    kind: 'published',
  },
  'masonry-construction': {
    document: 'Masonry Construction, Cleaning New Masonry',
    edition: 'as stored',
    section: 'vanadium stains; manganese stains',
    address: 'masonryconstruction.com/how-to/construction/cleaning-new-masonry_o',
    used: 'acid can bring out green or yellow vanadium and brown manganese stains',
    kind: 'published',
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
    used: 'what you measured or stated',
    kind: 'input',
  },
  factors: {
    document: 'Your factors',
    edition: '',
    section: '',
    used: 'your own values in place of the starting ones',
    kind: 'override',
  },
  yours: {
    document: 'Yours to state',
    edition: '',
    section: '',
    used: 'what only you can know: crew, weather, prices',
    kind: 'yours to state',
  },
  'table-62-19': {
    document: 'Repair unit rates (Russia), thin liquids put on facades',
    address: 'base.garant.ru/6722697',
    edition: 'not stated',
    section: 'table 62-19',
    used: 'scaffold 1, ladder 1.41, suspended 2.70; rough faces 13.5 % more',
    kind: 'published',
  },
  'cdhu-202': {
    document: 'CDHU, Sao Paulo, price bulletin of public works',
    edition: 'bulletin 202',
    section: 'facade scaffold up and down',
    used: '0.48 labor-h/m2 to 10 m, 1.28 above',
    kind: 'published',
  },
  sinapi: {
    document: "SINAPI, Brazil's federal system of building costs, finishing cleans",
    edition: 'norms of October 2025',
    section: 'items 99805, 99813, 99814 and others',
    address: 'github.com/kayque-soares/sinapi-sp-dados',
    used: 'labor-hours of whole cleans: 0.4302 labor-h/m2 with muriatic acid on a floor',
    kind: 'published',
  },
  'fde-2022': {
    document: 'FDE, Sao Paulo, unit prices of school buildings',
    edition: 'April 2022',
    section: 'item 16.11.020, facade cleaned by water jet',
    address: 'github.com/kayque-soares/sinapi-sp-dados',
    used: '0.10 and 0.10 labor-h/m2',
    kind: 'published',
  },
  'gesn-2022': {
    document: 'GESNr-2022, federal norms of repair work (Russia)',
    edition: '2022',
    section: '61-02-009-01, facade blasted with sand',
    address: 'cs.smetnoedelo.ru/gesnr2/gesnr61-02-009-01.html',
    used: '15.8 labor-h on 100 m2, window shields set',
    kind: 'published',
  },
  'mo-913': {
    document: 'NAVFAC MO-913, Historic Structures Preservation Manual',
    edition: 'as stored',
    section: 'wet cleaning, steam',
    address: 'navalfacilities.tpub.com/mo913/mo9130067.htm',
    used: 'steam cleaning of masonry: 1 min/ft2 a nozzle',
    kind: 'published',
  },
  c1585: {
    document: 'ASTM C1585, Rate of Absorption of Water by Hydraulic-Cement Concretes',
    edition: 'not stated',
    section: 'absorption against square root of time',
    used: 'uptake i = S sqrt(t)',
    kind: 'published',
  },
} as const satisfies Record<string, Source>;

/** The id of a source. */
export type SourceId = keyof typeof sources;
