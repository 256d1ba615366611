/** What a finding is about, what can cost most first. */
export const findingKinds = [
  'typed over',
  'left out',
  'added twice',
  'differs',
  'other rules',
  'out of date',
  'error',
  'not checked',
  'check',
  'override',
] as const;

/** What a finding is about. */
export type FindingKind = (typeof findingKinds)[number];

/** Something in the workbook that a reviewer should look at. */
export interface AuditFinding {
  readonly kind: FindingKind;
  readonly sheet: string;
  /** The cell or cells, for example `B7`. */
  readonly address: string;
  /** What was seen, in a sentence. */
  readonly what: string;
  /** What to do about it. */
  readonly todo: string;
  /** The formula concerned, as a person reads it. */
  readonly formula?: string;
}
