import { acidOnConcrete, stainUnderAcid } from './checks/acid-on-wall';
import { ageNotStated, tooOld, tooYoung } from './checks/age';
import { whatLiesBelow } from './checks/below';
import { noContactWindow } from './checks/contact-window';
import {
  heightMissing,
  mortarDefault,
  openingPerimeterMissing,
  residueAndBrushed,
  residueAssumed,
} from './checks/defaults-used';
import { dryBeforeLeast } from './checks/drying';
import { exampleRowsLeft } from './checks/example-rows';
import { factorsOverridden } from './checks/factors-overridden';
import { impossiblePerimeter } from './checks/impossible-perimeter';
import { tooMuchPressure, tooMuchToApply, tooNarrowJet } from './checks/jet';
import { labelsAlike, zonesAlike } from './checks/names-alike';
import { notPriced } from './checks/not-priced';
import { leftOut, washedNowhere } from './checks/out-of-scope';
import { preWetTooLong, suctionNotMeasured } from './checks/pre-wet';
import { priceOutsideSpan } from './checks/price-span';
import { sampleAreaMissing } from './checks/sample-area';
import { strongMortar } from './checks/strong-mortar';
import { scaffoldUnused, teamOfOne } from './checks/team-and-scaffold';
import { unmaskedGlassOrMetal } from './checks/unmasked-glass-or-metal';
import { heavyUnderWeakClass } from './checks/weak-class';
import { tooCold, tooHot, tooWindy } from './checks/weather';
import { yieldOutsideNorms } from './checks/yield';
import { nothingButOpenings, zeroArea } from './checks/zero-area';
import type { Check, Checked, Finding } from './finding';

/** Every check, what can harm first. */
export const allChecks: readonly Check[] = [
  noContactWindow,
  tooYoung,
  tooCold,
  tooHot,
  dryBeforeLeast,
  tooWindy,
  unmaskedGlassOrMetal,
  tooMuchPressure,
  tooNarrowJet,
  tooMuchToApply,
  acidOnConcrete,
  stainUnderAcid,
  whatLiesBelow,
  heavyUnderWeakClass,
  teamOfOne,
  preWetTooLong,
  sampleAreaMissing,
  exampleRowsLeft,
  zonesAlike,
  labelsAlike,
  washedNowhere,
  leftOut,
  zeroArea,
  nothingButOpenings,
  impossiblePerimeter,
  yieldOutsideNorms,
  priceOutsideSpan,
  tooOld,
  ageNotStated,
  strongMortar,
  suctionNotMeasured,
  mortarDefault,
  residueAssumed,
  residueAndBrushed,
  heightMissing,
  openingPerimeterMissing,
  scaffoldUnused,
  factorsOverridden,
  notPriced,
];

/**
 * Runs every check.
 * @param checked the estimates of the zones and the factors in force
 * @returns what was found, what can harm first
 */
export function findingsOf(checked: Checked): Finding[] {
  return allChecks.flatMap((check) => check(checked));
}
