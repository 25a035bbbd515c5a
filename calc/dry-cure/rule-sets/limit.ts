import type { CureLimit, CureReference, WeightBasis } from '../../cure/index.ts';
import type { RuleSet } from '../../sources/index.ts';
import type { WholeMuscleFinish, WholeMuscleProduct } from '../slice.ts';

/** How the cure gets in, as laws part it. */
export type CureRoute = 'dry' | 'immersion' | 'pumped';

/**
 * One limit on cured whole muscle, mg/kg. `meat-block` is the green weight of the meat, without its
 * skin where the law says so. A row binds only what all its lists name; no list binds everything.
 */
export interface WholeMuscleLimit extends CureLimit {
  readonly heating: 'any';
  readonly products?: readonly WholeMuscleProduct[];
  readonly routes?: readonly CureRoute[];
  readonly finishes?: readonly WholeMuscleFinish[];
  /** `true` binds only the traditional cures a law lists, `false` only the others. */
  readonly traditional?: boolean;
}

/** The limits of one jurisdiction for whole muscle. Ids are those of the rule sets of mixed forcemeats. */
export interface WholeMuscleRuleSet extends RuleSet {
  readonly ingoingBasis: Exclude<WeightBasis, 'finished'>;
  readonly appliesFrom?: string;
  readonly limits: readonly WholeMuscleLimit[];
  /** Shown beside the limits and never judged. */
  readonly references?: readonly CureReference[];
}

/** What is being cured, and how. Null is not yet said. */
export interface WholeMuscleKind {
  readonly product: WholeMuscleProduct | null;
  readonly finish: WholeMuscleFinish | null;
  readonly isTraditional: boolean;
  readonly route: CureRoute;
}
