import type { ZoneEstimate } from '../estimate/schedule';
import type { FactorsInForce } from '../rules/read-factors';
import type { SourceKind } from '../rules/source-kinds';
import type { SiteSourceId } from '../rules/site-sources';
import type { SiteWash } from './washes';

/** The steps in working order. */
export const stepIds = [
  'age',
  'sample-wash',
  'sample',
  'protection',
  'scrape',
  'pre-wet',
  'mix',
  'apply',
  'scrub',
  'dwell',
  'rinse',
  // The masked masonry that is washed afterwards, by the ceiling of its rows.
  'later-3',
  'later-2',
  'later-1',
  'later-0',
  'clear',
  'look',
] as const;

/** The name of a step, kept in the workbook: it never changes once shipped. */
export type StepId = (typeof stepIds)[number];

/** A number of a step, or names that it needs. */
export interface StepFact {
  readonly label: string;
  /** With its unit, in the user's system. */
  readonly value: string;
  readonly source: SiteSourceId;
  readonly kind: SourceKind;
}

/** A condition as it is kept where somebody overrules it, the same on every device, and as it is read out. */
export interface Hold {
  readonly condition: string;
  readonly words: string;
}

/** One step of the work on a zone. */
export interface Step {
  readonly id: StepId;
  readonly title: string;
  /** What to do, sentence by sentence. */
  readonly todo: readonly string[];
  readonly facts: readonly StepFact[];
  /**
   * Of a gate, for which later steps wait: what it is decided on. When something is added to that later, the gate is to
   * be passed again. Undefined for a step that is no gate.
   */
  readonly decidedOn?: readonly string[];
  /** Why it cannot be done as the workbook stands. */
  readonly hold?: string | undefined;
  /** Whether the hold is a condition, such as age or weather, that somebody may overrule with a reason; else it is an error. */
  readonly mayOverrule?: boolean;
  /** It may be done so many days after another step was ticked, and not before that. */
  readonly waits?: { readonly after: StepId; readonly title: string; readonly days: number };
  /** True where it is decided on the punch list too, and held while an item of it is open. */
  readonly ofPunchList?: boolean;
  /** What the step itself rests on. */
  readonly source: SiteSourceId;
  readonly kind: SourceKind;
}

/** What a step is built from. */
export interface StepSite {
  readonly zone: ZoneEstimate;
  /** Every zone of the job, for what stands below. */
  readonly zones: readonly ZoneEstimate[];
  readonly factors: FactorsInForce;
  /** The first wash of the zone; undefined where every wall is masked. */
  readonly first: SiteWash | undefined;
  /** The washes of the masked masonry afterwards. */
  readonly later: readonly SiteWash[];
}

/** Builds a step, or none where the zone does not need it. */
export type StepBuilder = (site: StepSite) => Step | undefined;
