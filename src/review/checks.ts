import { acidOnConcrete, stainUnderAcid } from './checks/acid-on-wall';
import { ageNotStated, tooOld, tooYoung } from './checks/age';
import { whatLiesBelow } from './checks/below';
import { noContactWindow } from './checks/contact-window';
import { heightMissing, mortarDefault, residueForetold } from './checks/defaults-used';
import { factorsOverridden } from './checks/factors-overridden';
import { tooMuchPressure, tooMuchToApply, tooNarrowJet } from './checks/jet';
import { sampleAreaMissing } from './checks/sample-area';
import { strongMortar } from './checks/strong-mortar';
import { unmaskedGlassOrMetal } from './checks/unmasked-glass-or-metal';
import { heavyUnderWeakClass } from './checks/weak-class';
import { tooCold, tooHot, tooWindy } from './checks/weather';
import { zeroArea } from './checks/zero-area';
import type { Check, Checked, Finding } from './finding';

/** Every check, what can harm first. */
export const allChecks: readonly Check[] = [
  noContactWindow,
  tooYoung,
  tooCold,
  tooHot,
  tooWindy,
  unmaskedGlassOrMetal,
  tooMuchPressure,
  tooNarrowJet,
  tooMuchToApply,
  acidOnConcrete,
  stainUnderAcid,
  whatLiesBelow,
  heavyUnderWeakClass,
  sampleAreaMissing,
  zeroArea,
  tooOld,
  ageNotStated,
  strongMortar,
  mortarDefault,
  residueForetold,
  heightMissing,
  factorsOverridden,
];

/**
 * Runs every check.
 * @param checked the estimates of the zones and the factors in force
 * @returns what was found, what can harm first
 */
export function findingsOf(checked: Checked): Finding[] {
  return allChecks.flatMap((check) => check(checked));
}
