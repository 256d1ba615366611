import { comparable } from '../quantity/cell';
import { STRONGEST_CLASS, type CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce, MaterialInForce } from '../rules/read-factors';
import type { ZoneRecord } from '../trace/recorder';
import { netArea } from '../walls/net-area';
import type { WallRow } from '../walls/wall-row';
import type { Zone } from '../walls/zones';
import { needClass, residueRules } from './residue';

/** What may touch a zone, and why. */
export interface Governing {
  /** The strongest class that the material that tolerates least allows. */
  readonly ceiling: CleanerClass;
  /** The materials that set the ceiling, in the order of the rows. */
  readonly governors: readonly MaterialInForce[];
  /** The greatest need among the bare masonry. */
  readonly mostNeed: CleanerClass;
}

/**
 * The governing ceiling of what is bare in a zone: the lowest of the ceilings of the unmasked rows, and of the unmasked
 * rows below that receive its rinse. A row with nothing to wash governs nothing. Common practice.
 * @param zone the rows of the zone, and the rows below that its rinse runs over
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns the decision, or undefined where no bare row is left and nothing is washed
 */
export function governZone(
  { rows, below }: Pick<Zone, 'rows' | 'below'>,
  factors: FactorsInForce,
  rec?: ZoneRecord,
): Governing | undefined {
  let ceiling: number = STRONGEST_CLASS;
  let mostNeed: CleanerClass = 0;
  let washed = false;
  let inMostNeed: WallRow | undefined;
  const materials = new Set<MaterialInForce>();
  const rules = residueRules(factors);
  for (const row of rows) {
    if (row.masked || netArea(row) <= 0) continue;
    washed = true;
    materials.add(row.material);
    ceiling = Math.min(ceiling, row.material.ceiling);
    if (!row.material.masonry) continue;
    const need = needClass(row, rules, rec?.row(row.row, row.wall));
    if (need > mostNeed) {
      mostNeed = need;
      inMostNeed = row;
    }
  }
  if (!washed) return undefined;
  for (const row of below) {
    if (netArea(row) <= 0) continue;
    materials.add(row.material);
    ceiling = Math.min(ceiling, row.material.ceiling);
  }
  const governors = [...materials].filter((material) => material.ceiling === ceiling);
  if (rec) {
    const symbols = [...materials].map((material) => {
      const symbol = `ceiling_${symbolOf(material)}`;
      rec.material(symbol, material, 'ceiling', 'class');
      return symbol;
    });
    rec.line('ceiling', ceiling, { ceilings: symbols.join(', ') });
    if (inMostNeed) rec.line('mostNeed', mostNeed, { need: `need_r${String(inMostNeed.row)}` });
    else rec.line('mostNeed', 0, '0');
  }
  return { ceiling: ceiling as CleanerClass, governors, mostNeed };
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
