import { material, type SourceChecks } from '../check';

/** Usual suction of clay brick. */
export const brickSuction: SourceChecks = {
  document: 'Textbook of building materials, page on water absorption and suction of clay brick',
  edition: 'excerpt on the web, not dated',
  section: 'low or medium suction rates: 1.0 to 2.0 kg/m2 in a minute',
  checks: (['at least', 'at most'] as const).map((relation) => ({
    what: `starting suction of red clay brick, ${relation}`,
    value: relation === 'at least' ? 1 : 2,
    unit: 'kg/m2',
    mark: 'published' as const,
    relation,
    within: 0,
    because: 'ours is an assumption within the published span',
    ours: () => material('Red clay brick', 'Suction', 'SI'),
  })),
};
