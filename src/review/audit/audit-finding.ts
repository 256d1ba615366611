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

/** How much depends on a finding. */
export type Severity = 'high' | 'medium' | 'low';

/** How much depends on each kind: `high` is a number of the bid that may be wrong, `low` is for the record. */
export const severities: Readonly<Record<FindingKind, Severity>> = {
  'typed over': 'high',
  'left out': 'high',
  'added twice': 'high',
  differs: 'high',
  'other rules': 'medium',
  'out of date': 'medium',
  error: 'high',
  'not checked': 'medium',
  check: 'medium',
  override: 'low',
};

/** A cell, or cells, of a finding. */
export interface FindingPlace {
  readonly sheet: string;
  /** For example `B7`. */
  readonly address: string;
}

/** Something in the workbook that a reviewer should look at. */
export interface AuditFinding extends FindingPlace {
  readonly kind: FindingKind;
  /** What was seen, in a sentence. */
  readonly what: string;
  /** What to do about it. */
  readonly todo: string;
  /** The formula concerned, as a person reads it. */
  readonly formula?: string;
  /** The other cells that it is about: one finding may be about many walls. */
  readonly others?: readonly FindingPlace[];
  /** The cells that show an error because of it. */
  readonly reaches?: readonly FindingPlace[];
}
