import { ageNotStated, tooYoung } from './checks/age';
import { noContactWindow } from './checks/contact-window';
import { heightMissing, mortarDefault, residueForetold } from './checks/defaults-used';
import { factorsOverridden } from './checks/factors-overridden';
import { tooCold } from './checks/freezing';
import { nozzleLimits } from './checks/nozzle-limits';
import { sampleAreaMissing } from './checks/sample-area';
import { sensitiveBase } from './checks/sensitive-base';
import { stainUnderAcid } from './checks/stain-under-acid';
import { strongMortar } from './checks/strong-mortar';
import { unmaskedGlassOrMetal } from './checks/unmasked-glass-or-metal';
import { heavyUnderWeakClass } from './checks/weak-class';
import { zeroArea } from './checks/zero-area';
import type { Check, Checked, Finding } from './finding';

/** Every check, what can harm first. */
export const allChecks: readonly Check[] = [
  noContactWindow,
  tooYoung,
  tooCold,
  unmaskedGlassOrMetal,
  nozzleLimits,
  stainUnderAcid,
  sensitiveBase,
  heavyUnderWeakClass,
  sampleAreaMissing,
  zeroArea,
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
