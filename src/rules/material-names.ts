import { comparable } from '../quantity/cell';
import { nearest } from '../quantity/nearest';
import { tradeWord } from '../quantity/trade-word';
import type { Material } from './materials';

/** A material by all its names. */
export interface NamedMaterial extends Pick<Material, 'code' | 'name' | 'aliases'> {
  /** Names of the user for it; they come before further names of the table. */
  readonly yourNames?: readonly string[];
}

const OFFERED = 3;
// 8" CMU, 8 in. CMU, nominal 12-inch block: the size of a unit does not change its face.
const NOMINAL_SIZE =
  /^\s*(?:nom(?:inal)?\.?\s*)?\d{1,2}\s*[- ]?(?:["”″]|in(?:ch)?(?:es)?\b\.?)\s*(?:nom(?:inal)?\.?|thick|wide)?\s*-?\s*/i;

/**
 * The material of a name, a code, a name of the user or a further name.
 * @param among the materials known
 * @param name what was typed; case, spacing, hyphens, British spelling, a plural and the nominal size of a unit ignored
 * @returns the material, or undefined
 */
export function findMaterial<M extends NamedMaterial>(among: readonly M[], name: string): M | undefined {
  // Spelled as the table spells it, as most are in a long job.
  const exact = among.find(({ code, name: own }) => own === name || code === name);
  if (exact) return exact;
  const typed = tradeWord(name);
  const sizeless = tradeWord(name.replace(NOMINAL_SIZE, ''));
  const forms = new Set([typed, sizeless, withoutPlural(typed), withoutPlural(sizeless)]);
  for (const form of forms) {
    const is = (text: string): boolean => tradeWord(text) === form;
    const found =
      among.find(({ code, name: own }) => is(code) || is(own)) ??
      among.find(({ yourNames = [] }) => yourNames.some(is)) ??
      among.find(({ aliases }) => aliases.some(is));
    if (found) return found;
  }
  return undefined;
}

function withoutPlural(word: string): string {
  return word.replace(/([^s])s$/, '$1');
}

/** What a unit is used for says nothing of what it is made of. */
const uses = new Set(
  [
    'band',
    'base',
    'cap',
    'cladding',
    'coping',
    'entrance',
    'face',
    'lintel',
    'panel',
    'sill',
    'spandrel',
  ].concat(['table', 'trim', 'unit', 'veneer', 'wall', 'water']),
);

/** Words of the trade that names of the table do not hold, each with those that they are nearest to. */
const senses: Readonly<Record<string, readonly string[]>> = {
  brick: ['paver', 'pavers', 'klinker', 'masonry'],
  block: ['cmu', 'cmus', 'concrete', 'masonry'],
  cast: ['precast', 'gfrc', 'concrete', 'stone'],
  stone: [
    'sandstone',
    'bluestone',
    'brownstone',
    'slate',
    'travertine',
    'quartzite',
    'ashlar',
    'fieldstone',
    'rubble',
  ],
  glass: [
    'storefront',
    'curtain',
    'curtainwall',
    'glazing',
    'glazed',
    'window',
    'windows',
    'vision',
    'door',
    'doors',
  ],
  metal: [
    'aluminum',
    'steel',
    'zinc',
    'louver',
    'louvers',
    'flashing',
    'panel',
    'panels',
    'frames',
    'lintel',
    'gutter',
  ],
  wood: ['cedar', 'siding', 'plywood', 'door', 'doors'],
  stucco: ['eifs', 'plaster', 'efs', 'parge', 'parging'],
};
const senseOfGroup: Readonly<Record<Material['group'], string>> = {
  brick: 'brick',
  'light brick': 'brick',
  block: 'block',
  cast: 'cast',
  stone: 'stone',
  glass: 'glass',
  metal: 'metal',
  other: 'wood',
};

/**
 * The materials nearest to a name that is not known, by the sense of its words first and by its letters then; offered,
 * never taken.
 * @param seen the name that was typed
 * @param among the materials known
 * @returns up to three names, nearest first
 */
export function nearestMaterials(
  seen: string,
  among: readonly (NamedMaterial & Pick<Material, 'group'>)[],
): string[] {
  const words = wordsOf(seen);
  const byLetters = nearest(
    seen,
    among.map(({ name }) => name),
    among.length,
  );
  const place = new Map(byLetters.map((name, index) => [name, index]));
  const scores = new Map(among.map((material) => [material.name, likeness(words, material)]));
  return byLetters
    .toSorted(
      (a, b) => (scores.get(b) ?? 0) - (scores.get(a) ?? 0) || (place.get(a) ?? 0) - (place.get(b) ?? 0),
    )
    .slice(0, OFFERED);
}

/** How much of the words a material's names hold: two for a word of a name, one for a word of its group. */
function likeness(words: readonly string[], material: NamedMaterial & Pick<Material, 'group'>): number {
  const { name, aliases, yourNames = [], group } = material;
  const own = new Set(wordsOf([name, ...aliases, ...yourNames].join(' ')));
  const sense = tradeWord(name) === 'stucco' ? 'stucco' : senseOfGroup[group];
  const near = new Set([sense, ...(senses[sense] ?? [])]);
  return words.reduce((sum, word) => sum + (own.has(word) ? 2 : near.has(word) ? 1 : 0), 0);
}

function wordsOf(text: string): string[] {
  return text
    .split(/[^\p{L}]+/u)
    .map((word) => tradeWord(comparable(word)))
    .filter((word) => word.length > 2 && !uses.has(withoutPlural(word)));
}
