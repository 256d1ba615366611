/** A word that no user reads, and what stands in its place. */
export interface WordRule {
  readonly not: RegExp;
  readonly say: string;
}

/** American spelling. British words stay readable where a user types them. */
const spelling: readonly WordRule[] = [
  { not: /\bcolour\w*|\bcoloured\b/i, say: 'color' },
  { not: /\blabour\w*/i, say: 'labor' },
  { not: /\bneighbour\w*/i, say: 'neighbor' },
  { not: /\bgrey\b/i, say: 'gray' },
  { not: /\bmould\w*/i, say: 'mold' },
  { not: /\b(?:metre|litre|millimetre|centimetre)s?\b/i, say: 'meter, liter' },
  { not: /\baluminium\b/i, say: 'aluminum' },
  {
    not: /\b\w*neutralis\w*|\brecognis\w*|\borganis\w*|\bsummaris\w*|\bgalvanis\w*|\banodis\w*/i,
    say: '-ize',
  },
  { not: /\bprogramme\b|\bcheque\b|\btonne\b|\bstorey\b|\bkerb\b|\btyre\b/i, say: 'the American spelling' },
  { not: /\b(?:centre|fibre|theatre)\b/i, say: 'center, fiber' },
  { not: /\bcancelled\b|\btravelled\b|\blabelled\b/i, say: 'one l' },
  { not: /\bjudgement\b/i, say: 'judgment' },
];

/** Plain words of the trade and of the office in place of translated or quaint ones. */
const plain: readonly WordRule[] = [
  { not: /\breckon\w*/i, say: 'counted, figured, worked out' },
  { not: /\bforetold\b|\bforetell\w*/i, say: 'assumed, expected' },
  { not: /(?<!put up and |kept and )\btak(?:en|es|e|ing) down\b/i, say: 'recorded' },
  { not: /\bneediest\b/i, say: 'in most need' },
  { not: /\bmend(?:ed|s|ing)?\b/i, say: 'fix, correct' },
  { not: /\bstands? still\b/i, say: 'stops' },
  { not: /\b[Pp]ut in\b/, say: 'Insert' },
  { not: /\blook(?:s|ed)? over\b/i, say: 'check' },
  { not: /\banew\b/i, say: 'again' },
  { not: /\bmade (?:\w+ )?dead\b/i, say: 'de-energized and locked out' },
  { not: /\bvouch\w*/i, say: 'confirms' },
  { not: /\bthirst\w*/i, say: 'absorbent' },
  { not: /\bmost sensitive\b/i, say: 'that tolerates least' },
  { not: /\bWhole difference\b/i, say: 'Total change' },
  { not: /\b[Ll]et it work\b|\b[Ll]eave it to work\b/, say: 'dwell' },
  { not: /\b[Ll]east dwell\b|(?<!at )\b[Mm]ost dwell\b/, say: 'minimum dwell, maximum dwell' },
  { not: /\bPut (?:it |the changes )?on a sheet\b/, say: 'Copy to a new sheet' },
  { not: /\bplanting\b(?!$)/i, say: 'landscaping' },
  { not: /\bput (?:it|no cleaner) on\b|\bcleaner (?:is )?put on with\b/i, say: 'apply' },
  { not: /\b[Bb]ar the ground\b|\bways (?:in|out) (?:below|that|of)\b/, say: 'barricade, entrances, exits' },
  { not: /\bRests on\b/, say: 'Sources' },
  { not: /\bthe written word of\b/i, say: 'written approval from' },
  { not: /\bat a cooler hour\b/i, say: 'at a cooler time of day' },
  { not: /\bmay not meet\b/i, say: 'must not touch' },
  { not: /\bthe nearest are\b/i, say: 'Did you mean' },
  { not: /\bfarther off\b/i, say: 'farther away' },
  {
    not: /(?<!there )\bis no (?:cell|port|address|list|object|text|date|JSON|number|name|part|workbook|bid)\b/,
    say: 'is not a',
  },
  { not: /\bdiffer to the eye\b|\bare not to be seen\b/i, say: 'look different, invisible' },
  { not: /\bhanded? on\b/i, say: 'pass on' },
  {
    not: /(?:ft2|ft²|m2|m²|gal|lb|kg|labor-h|line|passes) an? (?:labor-hour|zone|gallon|pass|person|nozzle|day)\b/,
    say: 'per',
  },
];

/** What the program understands where a user types it so. */
export const understood: ReadonlySet<string> = new Set([
  'centimetres',
  'labourhours',
  'litre',
  'litres',
  'metre',
  'metres',
  'millimetres',
  'price.labour',
  'storey',
]);

/** Every rule. */
export const wordRules: readonly WordRule[] = [...spelling, ...plain];
