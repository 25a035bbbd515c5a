import {
  type CureAmounts,
  type JudgedLimit,
  judgeLimit,
  type LimitReason,
  limitParams,
  type MeasuredResidual,
} from '../cure/index.ts';
import type { Params, StageId, Verdict } from '../findings/index.ts';
import {
  type WholeMuscleKind,
  type WholeMuscleRuleSet,
  wholeMuscleLimits,
  wholeMuscleRuleSet,
} from './rule-sets/index.ts';

/** The id of a subject's own wording of a reason that cure knows too. */
export type Renamed<Subject extends string, Id extends string> = Id extends `cure.${infer Tail}`
  ? `${Subject}.${Tail}`
  : never;

/** Reasons of the verdicts on nitrite and nitrate in whole muscle. */
export type MuscleReason<Subject extends string> =
  | Renamed<Subject, LimitReason>
  | `${Subject}.${
      | 'no-rule-set'
      | 'rule-set-unknown'
      | 'product-unknown'
      | 'limit-not-carried'
      | 'uptake-unknown'
      | 'no-nitrate'
      | 'nitrate-present'
      | 'nitrate-specialist'
      | 'finish-unknown'}`;

/** Reason of cure under the subject's own name. */
export function renamed<Subject extends string>(
  subject: Subject,
  reason: LimitReason,
): Renamed<Subject, LimitReason> {
  return `${subject}.${reason.slice('cure.'.length)}` as Renamed<Subject, LimitReason>;
}

/** Ceilings and floors of a rule set, judged on the amounts of a piece or a vat. */
export interface JudgedMuscle {
  readonly ceilings: readonly JudgedLimit[];
  readonly floors: readonly JudgedLimit[];
}

/** Every limit that binds the product, judged; empty when no rule set or no limit is carried. */
export function judgeMuscle(
  ruleSet: WholeMuscleRuleSet | null,
  kind: WholeMuscleKind,
  amounts: CureAmounts,
  measured: MeasuredResidual | null = null,
): JudgedMuscle {
  if (ruleSet === null || kind.product === null) return { ceilings: [], floors: [] };
  const judged = wholeMuscleLimits(ruleSet, kind).map((limit) => judgeLimit(limit, amounts, measured));
  return {
    ceilings: judged.filter(({ limit }) => limit.role === 'ceiling'),
    floors: judged.filter(({ limit }) => limit.role !== 'ceiling'),
  };
}

/** Whose verdicts they are. */
export interface VerdictOf<Subject extends StageId> {
  readonly subject: Subject;
  readonly ruleSetId: string | null;
  readonly kind: WholeMuscleKind;
  readonly subjectId?: string;
}

type MuscleVerdict<Subject extends string> = Verdict<MuscleReason<Subject>>;

/**
 * Verdicts on nitrite. Without a rule set, a product or a carried limit nothing can be told; where
 * uptake is not controlled (`judged` null) nothing can be told either, and no figure is given.
 */
export function nitriteVerdicts<Subject extends StageId>(
  of: VerdictOf<Subject>,
  judged: JudgedMuscle | null,
): MuscleVerdict<Subject>[] {
  const { subject, ruleSetId, kind } = of;
  const ruleSet = wholeMuscleRuleSet(ruleSetId);
  const cannotTell = (reason: MuscleReason<Subject>, params: Params = {}) => [
    verdict(of, 'nitrite', { state: 'cannot-tell', reason, params, basis: null, mark: null }),
  ];
  if (ruleSetId === null) return cannotTell(`${subject}.no-rule-set`);
  if (ruleSet === null) return cannotTell(`${subject}.rule-set-unknown`, { ruleSetId });
  if (judged === null) return cannotTell(`${subject}.uptake-unknown`);
  if (kind.product === null) return cannotTell(`${subject}.product-unknown`);
  if (judged.ceilings.length === 0) {
    return cannotTell(`${subject}.limit-not-carried`, { jurisdiction: ruleSet.jurisdiction });
  }
  return judged.ceilings.map((one) =>
    verdict(of, one.limit.kind === 'residual' ? 'nitrite-residual' : 'nitrite', {
      state: one.state,
      reason: renamed(subject, one.reason),
      params: { ...limitParams(one), ruleSetId: ruleSet.id, jurisdiction: ruleSet.jurisdiction },
      basis: one.limit.source,
      mark: one.limit.mark,
    }),
  );
}

/**
 * Verdict on nitrate: none of it in bacon (9 CFR 424.21(c)), nor in anything that is cooked or eaten
 * soon (common practice, no source). In a long-dried product it is a specialist's matter.
 */
export function nitrateVerdict<Subject extends StageId>(
  of: VerdictOf<Subject>,
  amounts: CureAmounts,
): MuscleVerdict<Subject> {
  const { subject, kind } = of;
  const say = (state: 'pass' | 'fail' | 'cannot-tell', reason: MuscleReason<Subject>) =>
    verdict(of, 'nitrate', {
      state,
      reason,
      params: {},
      basis: kind.product === 'bacon' ? 'us-9-cfr-424-21-c' : null,
      mark: kind.product === 'bacon' ? 'confirmed' : 'common-practice',
    });
  if (amounts.declaresNitrate) {
    switch (nitrateBar(kind)) {
      case 'barred':
        return say('fail', `${subject}.nitrate-present`);
      case 'specialist':
        return say('cannot-tell', `${subject}.nitrate-specialist`);
      case 'unknown':
        return say('cannot-tell', `${subject}.finish-unknown`);
    }
  }
  if (amounts.nitrateG.high === null) return say('cannot-tell', `${subject}.nitrate-not-declared`);
  return say('pass', `${subject}.no-nitrate`);
}

/** Whether nitrate is out of place in a product. */
export function nitrateBar(kind: WholeMuscleKind): 'barred' | 'specialist' | 'unknown' {
  if (kind.product === 'bacon') return 'barred';
  if (kind.finish === null || kind.product === null) return 'unknown';
  return kind.finish === 'dried-raw' ? 'specialist' : 'barred';
}

function verdict<Subject extends StageId>(
  of: VerdictOf<Subject>,
  what: string,
  rest: Omit<MuscleVerdict<Subject>, 'id' | 'stage' | 'subjectId'>,
): MuscleVerdict<Subject> {
  const { subject, subjectId } = of;
  return {
    id: `${subject}.${what}`,
    stage: subject,
    ...rest,
    ...(subjectId === undefined ? {} : { subjectId }),
  };
}
