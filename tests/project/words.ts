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
  { not: /\bmade dead\b/i, say: 'de-energized and locked out' },
  { not: /\bvouch\w*/i, say: 'confirms' },
  { not: /\bthirst\w*/i, say: 'absorbent' },
  { not: /\bmost sensitive\b/i, say: 'that tolerates least' },
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
