import type { Alternate } from './alternate';
import { brushDownDaily } from './early/brush-down-daily';
import type { EarlyChoice, OpenBid } from './early/early-choice';
import { keepZonesApart } from './early/keep-zones-apart';
import { maskGovernors, washMasked } from './early/masking';
import { otherMaterial } from './early/other-material';
import { otherMortar } from './early/other-mortar';

const choices: readonly EarlyChoice[] = [
  brushDownDaily,
  otherMortar,
  otherMaterial,
  washMasked,
  maskGovernors,
  keepZonesApart,
];

/**
 * The choices that somebody can still make, each where it applies.
 * @param bid the bid as it is
 * @returns the alternates
 */
export function earlyChoices(bid: OpenBid): Alternate[] {
  return choices.flatMap((choice) => choice(bid));
}
