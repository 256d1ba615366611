import type { AccessKind } from '../rules/access-kinds';
import { accessKinds } from '../rules/access-kinds';
import type { FactorsInForce } from '../rules/read-factors';
import type { Texture } from '../rules/materials';
import type { RowRecord } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';

/** What slows the person, not the label. */
export interface Slowdowns {
  readonly access: Readonly<Record<AccessKind, number>>;
  /** How walls are reached that do not say so themselves. */
  readonly usual: AccessKind;
  readonly texture: Readonly<Record<Texture, number>>;
}

/**
 * The slowdowns in force. Source: Russian repair unit rates, table 62-19.
 * @param factors the factors in force
 * @returns by access and by texture, ratios
 */
export function slowdownsOf(factors: FactorsInForce): Slowdowns {
  return {
    access: Object.fromEntries(
      accessKinds.map((kind) => [kind, factors.value(`access.factor.${kind}`)]),
    ) as Record<AccessKind, number>,
    usual: factors.choice('access.kind') as AccessKind,
    texture: {
      smooth: factors.value('texture.factor.smooth'),
      rough: factors.value('texture.factor.rough'),
    },
  };
}

/** How a row slows the work. */
export interface Slowdown {
  /** Masking. */
  readonly masking: number;
  /** Scraping and washing. */
  readonly washing: number;
}

/**
 * How a row slows the work.
 * @param row the wall row
 * @param slowdowns the slowdowns in force
 * @param rec takes down the lines
 * @returns ratios for masking and for scraping and washing
 */
export function slowdownOf(row: WallRow, slowdowns: Slowdowns, rec?: RowRecord): Slowdown {
  const kind = row.access ?? slowdowns.usual;
  const { texture } = row.material;
  const masking = slowdowns.access[kind];
  const washing = masking * slowdowns.texture[texture];
  if (rec) {
    rec.line(row.access ? 'accessOfRow' : 'accessUsual', masking, { kind, place: accessKinds.indexOf(kind) });
    rec.line('slowed', washing, { texture });
  }
  return { masking, washing };
}
