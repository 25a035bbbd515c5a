import type { Mark, SourceId } from '../sources/index.ts';

/** How much a finding weighs. Quality ranges give notes, safety limits give stops. */
export type Severity = 'stop' | 'caution' | 'note';

/** The subjects a batch is assessed by, in the order of the work. */
export type StageId =
  | 'yield'
  | 'blend'
  | 'formula'
  | 'cure'
  | 'dry-cure'
  | 'brine'
  | 'drying'
  | 'mould'
  | 'plan'
  | 'slicing'
  | 'seasoning'
  | 'binder'
  | 'chill-budget'
  | 'casings'
  | 'gelee'
  | 'cook-plan'
  | 'thermometer'
  | 'cook'
  | 'press'
  | 'cool'
  | 'label'
  | 'record';

/** A verdict has three states, never two: missing data is "cannot tell". */
export type VerdictState = 'pass' | 'fail' | 'cannot-tell';

/** Numbers and words a finding's sentence needs. Keys of numbers carry the unit (`limitPpm`, `coreC`). */
export type Params = Readonly<Record<string, string | number>>;

/** Something worth telling the person, as data. Its words live with the screen, keyed by `id`. */
export interface Finding<Id extends string = string> {
  readonly id: Id;
  readonly severity: Severity;
  readonly stage: StageId;
  /** Path of the input it belongs to (`formula.lines.<lineId>.amount`), so that it shows at the field. */
  readonly field?: string;
  readonly params: Params;
  /** The published source the finding rests on. */
  readonly basis?: SourceId;
  /** Slug of the caution page that explains it. */
  readonly caution?: string;
}

/** One limit judged. `reason` is a key of the words catalogue, as a finding's id is. */
export interface Verdict<Id extends string = string> {
  /** Which limit: `cure.nitrite`, `cook.hold`, `cool.leg.135F-70F`. */
  readonly id: string;
  readonly stage: StageId;
  readonly state: VerdictState;
  readonly reason: Id;
  readonly params: Params;
  readonly basis: SourceId | null;
  /** How the limit itself is known. Shown beside the verdict, on screen and on paper. */
  readonly mark: Mark | null;
  /** The log, mould or step that ruled, where several were judged. */
  readonly subjectId?: string;
}

/** An input that is blank or cannot be read, and what cannot be computed without it. */
export interface MissingInput {
  readonly field: string;
  readonly neededFor: string;
}

/** What one subject makes of its slice of the batch. */
export interface StageResult<Values, Id extends string = string> {
  readonly values: Values;
  readonly findings: readonly Finding<Id>[];
  readonly verdicts: readonly Verdict<Id>[];
  readonly missing: readonly MissingInput[];
}
