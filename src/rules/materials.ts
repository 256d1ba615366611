import type { CleanerClass } from './cleaner-classes';
import type { SourceKind } from './source-kinds';

/** What a cleaner, water and pressure may do to a face. */
export interface Material {
  /** Short code, also used in factor ids. */
  readonly code: string;
  readonly name: string;
  /** Strongest cleaner class that may touch it. */
  readonly ceiling: CleanerClass;
  /** Initial rate of absorption, g a minute on 30 in2. */
  readonly suction: number;
  /** Most pressure at the face, psi. */
  readonly pressure: number;
  readonly kind: SourceKind;
  readonly why: string;
  /** Groups that checks ask for. */
  readonly group: 'brick' | 'light brick' | 'block' | 'cast' | 'stone' | 'glass' | 'metal' | 'other';
}

/**
 * Starting values, each open to override by the factor `material.<code>.ceiling`, `.suction` or `.pressure`.
 * The kind is that of the weakest founded number in the row.
 */
export const materials: readonly Material[] = [
  { code: 'red-clay-brick', name: 'Red clay brick', ceiling: 3, suction: 20, pressure: 800, kind: 'assumption', group: 'brick', why: 'takes all wet methods (older BIA table, from memory); pressure of new brick published; suction assumed' },
  { code: 'dark-clay-brick', name: 'Dark clay brick', ceiling: 3, suction: 15, pressure: 800, kind: 'assumption', group: 'brick', why: 'body colour, no manganese' },
  { code: 'manganese-brick', name: 'Manganese-coloured brick', ceiling: 2, suction: 15, pressure: 600, kind: 'from memory', group: 'light brick', why: 'acid can bring out manganese stain' },
  { code: 'light-clay-brick', name: 'Light clay brick', ceiling: 2, suction: 20, pressure: 600, kind: 'from memory', group: 'light brick', why: 'vanadium stain and acid burn show' },
  { code: 'sand-faced-brick', name: 'Sand-faced brick', ceiling: 1, suction: 25, pressure: 200, kind: 'from memory', group: 'brick', why: 'acid and pressure strip the sand' },
  { code: 'glazed-brick', name: 'Glazed brick', ceiling: 1, suction: 1, pressure: 200, kind: 'from memory', group: 'brick', why: 'soft cloth and ample water' },
  { code: 'brick-coloured-mortar', name: 'Clay brick in coloured mortar', ceiling: 1, suction: 20, pressure: 400, kind: 'from memory', group: 'brick', why: 'acid bleaches the pigment' },
  { code: 'ground-face-block', name: 'Ground-face block', ceiling: 1, suction: 8, pressure: 400, kind: 'from memory', group: 'block', why: 'acid dulls the polish and etches aggregate' },
  { code: 'split-face-block', name: 'Split-face block', ceiling: 2, suction: 12, pressure: 600, kind: 'assumption', group: 'block', why: 'rough face holds the paste film' },
  { code: 'plain-block', name: 'Plain concrete block', ceiling: 2, suction: 15, pressure: 600, kind: 'assumption', group: 'block', why: 'paste film: treat the wall alike (NCMA TEK 8-4A)' },
  { code: 'cast-stone', name: 'Cast stone', ceiling: 2, suction: 6, pressure: 600, kind: 'assumption', group: 'cast', why: 'a cleaner made for mortar' },
  { code: 'architectural-precast', name: 'Architectural precast', ceiling: 2, suction: 6, pressure: 600, kind: 'assumption', group: 'cast', why: 'a cleaner made for mortar' },
  { code: 'limestone', name: 'Limestone', ceiling: 1, suction: 6, pressure: 600, kind: 'assumption', group: 'stone', why: 'soluble in acid; pressure kept below the published 1,200 psi' },
  { code: 'marble', name: 'Marble', ceiling: 0, suction: 1, pressure: 200, kind: 'assumption', group: 'stone', why: 'soluble in acid, polished' },
  { code: 'granite', name: 'Granite', ceiling: 2, suction: 1, pressure: 800, kind: 'assumption', group: 'stone', why: 'dense silicate stone' },
  { code: 'glazed-terra-cotta', name: 'Glazed terra cotta', ceiling: 1, suction: 1, pressure: 200, kind: 'assumption', group: 'brick', why: 'glaze is harmed by acid and abrasion' },
  { code: 'stucco', name: 'Stucco', ceiling: 1, suction: 20, pressure: 200, kind: 'assumption', group: 'cast', why: 'soft face, soluble binder' },
  { code: 'coated-glass', name: 'Coated glass', ceiling: 0, suction: 0, pressure: 100, kind: 'common practice', group: 'glass', why: 'acid and abrasion harm the coating' },
  { code: 'plain-glass', name: 'Plain glass', ceiling: 1, suction: 0, pressure: 400, kind: 'assumption', group: 'glass', why: 'etched by stronger cleaner' },
  { code: 'finished-aluminium', name: 'Painted or anodised aluminium', ceiling: 0, suction: 0, pressure: 100, kind: 'assumption', group: 'metal', why: 'finish is attacked by acid and detergent residue' },
  { code: 'galvanised-steel', name: 'Galvanised steel', ceiling: 0, suction: 0, pressure: 200, kind: 'assumption', group: 'metal', why: 'zinc dissolves in acid' },
  { code: 'copper', name: 'Copper', ceiling: 0, suction: 0, pressure: 200, kind: 'assumption', group: 'metal', why: 'patina and run-off stain' },
  { code: 'timber', name: 'Timber', ceiling: 1, suction: 10, pressure: 200, kind: 'assumption', group: 'other', why: 'raised grain, bleached finish' },
];
