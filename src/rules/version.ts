/**
 * The version of the rules: raised with every change that gives another number for the same walls and factors, be it an
 * expression, a starting value or a material. CHANGELOG.md says what each changed.
 */
export const RULES_VERSION = '1';
