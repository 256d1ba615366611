import { comparable } from '../quantity/cell';
import { STRONGEST_CLASS, type CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce, MaterialInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';
import type { Zone } from '../walls/zones';
import { needClass, needsOf } from './need-class';

/** What may touch a zone, what does, and why. */
export interface Governing {
  /** The strongest class that the zone's weakest unmasked material allows. */
  readonly ceiling: CleanerClass;
  /** The materials that set the ceiling, in the order of the rows. */
  readonly governors: readonly MaterialInForce[];
  /** The greatest need among the unmasked rows. */
  readonly mostNeed: number;
  /** The class to use. */
  readonly classToUse: CleanerClass;
}

/**
 * The governing ceiling of a zone and the class to use: the gentlest that does the work, never above the ceiling.
 * @param zone the rows of the zone, and the rows below that its rinse runs over: their ceilings count too
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns the decision, or undefined where every row is masked and nothing is washed
 */
export function governZone(
  { rows, below }: Pick<Zone, 'rows' | 'below'>,
  factors: FactorsInForce,
  rec?: Recorder,
): Governing | undefined {
  let ceiling: number = STRONGEST_CLASS;
  let mostNeed = 0;
  let washed = false;
  let neediest: WallRow | undefined;
  const materials = new Set<MaterialInForce>();
  const needs = needsOf(factors);
  for (const row of rows) {
    if (row.masked) continue;
    washed = true;
    materials.add(row.material);
    ceiling = Math.min(ceiling, row.material.ceiling);
    rec?.inRow(row.row, row.wall);
    const need = needClass(row, needs, rec);
    if (need > mostNeed) {
      mostNeed = need;
      neediest = row;
    }
  }
  if (!washed) return undefined;
  for (const { material } of below) {
    materials.add(material);
    ceiling = Math.min(ceiling, material.ceiling);
  }
  const governors = [...materials].filter((material) => material.ceiling === ceiling);
  const classToUse = Math.min(ceiling, factors.chosenClass ?? mostNeed) as CleanerClass;
  if (rec) {
    const symbols = [...materials].map((material) => {
      const symbol = `ceiling_${symbolOf(material)}`;
      rec.material(symbol, material, 'ceiling', 'class');
      return symbol;
    });
    rec.line('ceiling@', `min(${symbols.join(', ')})`, ceiling, 'class', 'ceiling');
    rec.line('mostNeed@', neediest ? `need_r${String(neediest.row)}` : '0', mostNeed, 'class', 'mostNeed');
    if (factors.chosenClass === undefined) {
      rec.line('class@', 'min(ceiling@, mostNeed@)', classToUse, 'class', 'classToUse');
    } else {
      rec.line('class@', `min(ceiling@, ${String(factors.chosenClass)})`, classToUse, 'class', 'chosenClass');
    }
  }
  return { ceiling: ceiling as CleanerClass, governors, mostNeed, classToUse };
}

/**
 * A material's code as a word that an expression can use.
 * @param material the material
 * @returns letters, digits and underscores
 */
export function symbolOf(material: MaterialInForce): string {
  // Codes that differ in their signs alone must not share a symbol.
  const word = (sign: string) => (sign === '-' ? '_' : `X${String(sign.codePointAt(0)?.toString(16))}X`);
  return comparable(material.code).replace(/[^a-z0-9]/gu, word);
}
