import type { Params, Verdict } from '../findings/index.ts';
import { sourceOf } from '../sources/index.ts';
import type { CureAmounts } from './amounts.ts';
import type { CureFindingId } from './finding-ids.ts';
import { type JudgedLimit, judgeLimit } from './judge-limit.ts';
import type { MeasuredResidual } from './residual.ts';
import { type CureRuleSet, limitsFor, type ProductHeating } from './rule-sets/index.ts';

type CureVerdict = Verdict<CureFindingId>;

/** The one family whose long drying gives nitrate something to do, under an approved process. */
export const NITRATE_FAMILY = 'dried-muscle';

/** Every limit of a rule set that binds the product, judged. Floors are judged too and stay apart. */
export function judgeRuleSet(
  ruleSet: CureRuleSet,
  amounts: CureAmounts,
  heating: ProductHeating,
  measured: MeasuredResidual | null = null,
): { readonly ceilings: readonly JudgedLimit[]; readonly floors: readonly JudgedLimit[] } {
  const limits = limitsFor(ruleSet, heating);
  // A batch without an accelerator needs no line about it.
  const asked = limits.filter((limit) => limit.substance === 'nitrite' || amounts.acceleratorG.high !== 0);
  const judged = asked.map((limit) => judgeLimit(limit, amounts, measured));
  return {
    ceilings: judged.filter(({ limit }) => limit.role === 'ceiling'),
    floors: judged.filter(({ limit }) => limit.role !== 'ceiling'),
  };
}

/** Verdicts on nitrite, nitrate and accelerator. Without a rule set nothing can be told, a stop excepted. */
export function cureVerdicts(
  ruleSetId: string | null,
  ruleSet: CureRuleSet | null,
  judged: readonly JudgedLimit[],
  amounts: CureAmounts,
  familyId: string | null,
): CureVerdict[] {
  if (ruleSet === null) {
    const reason = ruleSetId === null ? 'cure.no-rule-set' : 'cure.rule-set-unknown';
    const params: Params = ruleSetId === null ? {} : { ruleSetId };
    const nitrate = nitrateVerdict(amounts, familyId);
    return [
      cannotTell('cure.nitrite', reason, params),
      nitrate.state === 'fail' ? nitrate : cannotTell('cure.nitrate', reason, params),
    ];
  }
  return [...judged.map((one) => limitVerdict(ruleSet, one)), nitrateVerdict(amounts, familyId)];
}

function limitVerdict(ruleSet: CureRuleSet, judged: JudgedLimit): CureVerdict {
  const { limit, state, reason } = judged;
  const id = `cure.${limit.substance}${limit.kind === 'residual' ? '-residual' : ''}`;
  return {
    id,
    stage: 'cure',
    state,
    reason,
    params: { ...limitParams(judged), ruleSetId: ruleSet.id, jurisdiction: ruleSet.jurisdiction },
    basis: limit.source,
    mark: limit.mark,
  };
}

/** What a sentence about a limit needs. Figures that are not known are left out. */
export function limitParams(judged: JudgedLimit): Params {
  const { limit, ppm, highestPpm } = judged;
  const { edition, reviewed } = sourceOf(limit.source);
  return {
    limitId: limit.id,
    limitPpm: limit.valuePpm,
    limitPrinted: limit.printed,
    expressedAs: limit.expressedAs,
    weightBasis: limit.basis,
    edition,
    reviewed,
    ...(limit.asWritten === undefined ? {} : { asWritten: limit.asWritten }),
    ...(ppm === null ? {} : { ppm }),
    ...(highestPpm === null ? {} : { highestPpm }),
  };
}

/**
 * Nitrate has nothing to turn it into nitrite in a mix that is cooked, and no place there. Common
 * practice, no source; several laws allow it in other products.
 */
function nitrateVerdict(amounts: CureAmounts, familyId: string | null): CureVerdict {
  const verdict = (state: CureVerdict['state'], reason: CureFindingId): CureVerdict => ({
    id: 'cure.nitrate',
    stage: 'cure',
    state,
    reason,
    params: {},
    basis: null,
    mark: 'common-practice',
  });
  if (amounts.isEmpty) return verdict('cannot-tell', 'cure.empty');
  if (amounts.declaresNitrate) {
    return familyId === NITRATE_FAMILY
      ? verdict('cannot-tell', 'cure.nitrate-specialist')
      : verdict('fail', 'cure.nitrate-present');
  }
  if (amounts.nitrateG.high === null) return verdict('cannot-tell', 'cure.nitrate-not-declared');
  return verdict('pass', 'cure.no-nitrate');
}

function cannotTell(id: string, reason: CureFindingId, params: Params): CureVerdict {
  return { id, stage: 'cure', state: 'cannot-tell', reason, params, basis: null, mark: null };
}
