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
  { not: /façade/i, say: 'facade' },
  { not: /\bper cent\b/i, say: 'percent' },
  { not: /\blouvres?\b/i, say: 'louver' },
  { not: /\b(?:down|up|to)wards\b/i, say: 'downward, upward, toward' },
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
  { not: /(?<!`)\bhire[ds]?\b(?!\.least)/i, say: 'rental, rented' },
  { not: /(?!^persons$)(?<!^)\bpersons\b|^persons\b(?!$)/i, say: 'people' },
  { not: /\blances?\b/i, say: 'wand' },
  { not: /\brun-off\b/i, say: 'runoff' },
  { not: /\bmark-ups?\b/i, say: 'markup' },
  { not: /\bclear-up\b/i, say: 'cleanup' },
  {
    not: /\bput(?:ting)? (?:the |a )?scaffold up\b|\bscaffold (?:put )?up and\b/i,
    say: 'erect and dismantle',
  },
  { not: /\bput(?:ting)? (?:the )?cleaner on\b|\bcleaner put on\b/i, say: 'apply' },
  { not: /\bin one go\b/i, say: 'at one time' },
  { not: /\bonce more\b/i, say: 'again' },
  { not: /\bput(?:ting)? right\b/i, say: 'fix' },
  { not: /\bthe (?:least|most|coldest|narrowest) is\b/i, say: 'the minimum is, the maximum is' },
  { not: /\bleast (?:price|passes|wait|sample|nozzle|ceiling)\b/i, say: 'minimum, lowest' },
  {
    not: /(?:hours|days|water|cleaner|concentrate|runoff|alkali) by (?:the )?price\b/i,
    say: 'times the price',
  },
  { not: /\b(?:an|sample) area has been looked at|\blooked at (?:when )?dry\b/i, say: 'inspected' },
  { not: /\b(?:do|does|did) not keep (?:it|the|where|which)\b/i, say: 'save' },
  { not: /\bthe workbook calculate[.;]| ha(?:ve|s) the workbook calculate\b/i, say: 'recalculate' },
  { not: /\bsomething else than\b/i, say: 'something other than' },
  { not: /\b(?:is )?read by nothing\b/i, say: 'used by no formula' },
  { not: /\bthe draws\b|\bdraw again\b/i, say: 'trials: a draw is a payment' },
  { not: /^a hair$|\bby a hair\b/i, say: 'a tiny margin' },
  { not: /\bslip of the pen\b/i, say: 'typing error' },
  { not: /\bstands for itself\b/i, say: 'refers to itself' },
  { not: /\bpublic norms\b/i, say: 'published norms' },
  { not: /\bin the system SI\b/i, say: 'in SI units' },
  { not: /\bteam-time\b/i, say: 'team time' },
  { not: /\bgive your name\b/i, say: 'enter your name' },
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
