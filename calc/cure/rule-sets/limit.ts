import type { Mark, RuleSet, SourceId } from '../../sources/index.ts';

/** What a limit is counted on: raw meat, fat, liver and offal; everything in the bowl; the finished product. */
export type WeightBasis = 'meat-block' | 'total' | 'finished';

/** The form a limit's figure is written in. A figure in another form is converted before it is compared. */
export type ExpressedAs =
  | 'sodium-nitrite'
  | 'nitrite-ion'
  | 'nitrite-and-nitrate-salts'
  | 'nitrite-and-nitrate-as-sodium-nitrite'
  | 'sodium-ascorbate-or-erythorbate';

/** Heated below sterilisation, or sterilised in its closed pack (F₀ of 3 or more). */
export type ProductHeating = 'heat-treated' | 'sterilised';

/**
 * One limit of one rule set, mg/kg by mass. A ceiling is judged. A floor says from what level a
 * product may carry a name or meets an agency's policy: it is reported and never judged as safety.
 */
export interface CureLimit {
  readonly id: string;
  readonly substance: 'nitrite' | 'accelerator';
  /** Put in at mixing, or left in the finished product. */
  readonly kind: 'ingoing' | 'residual';
  readonly role: 'ceiling' | 'naming-floor' | 'policy-floor';
  /** Products it is meant for. */
  readonly heating: ProductHeating | 'any';
  /** Exact value that is computed with. */
  readonly valuePpm: number;
  /** As it is commonly printed; never the number that is compared. */
  readonly printed: string;
  readonly expressedAs: ExpressedAs;
  readonly basis: WeightBasis;
  readonly source: SourceId;
  readonly mark: Mark;
  /** The words of the law, where its unit is another. */
  readonly asWritten?: string;
}

/** The curing limits of one jurisdiction for comminuted or mixed products. */
export interface CureRuleSet extends RuleSet {
  /** Basis on which this rule set counts what is put in; a wanted dose is counted on it too. */
  readonly ingoingBasis: Exclude<WeightBasis, 'finished'>;
  /** First day of application, ISO, where the rule set has one. */
  readonly appliesFrom?: string;
  readonly limits: readonly CureLimit[];
  /** Undertakings shown beside the limits and never judged. */
  readonly references?: readonly CureReference[];
}

/** A figure worth knowing beside the limits. */
export interface CureReference {
  readonly id: string;
  readonly valuePpm: number;
  readonly expressedAs: ExpressedAs;
  readonly source: SourceId;
  readonly mark: Mark;
}
