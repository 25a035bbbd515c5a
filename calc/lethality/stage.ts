import type { MissingInput, Params, StageResult, Verdict } from '../findings/index.ts';
import { worstOf } from '../probe-log/index.ts';
import { type ProcessSlice, phasesOf } from '../process/index.ts';
import { formatLimitTemp } from '../quantities/index.ts';
import { cookFindings } from './cook-findings.ts';
import type { CookFindingId } from './finding-ids.ts';
import { type Asked, judgeLog } from './judge-log.ts';
import { type CookFacts, resolveLimit, UNKNOWN_FACTS } from './resolve-limit.ts';
import { cookLimit, cookRuleSet } from './rule-sets/index.ts';
import type { CookLogResult, CookValues } from './values.ts';

/** The limit the plan names, as it stands for this product. */
function askedOf(process: ProcessSlice, facts: CookFacts): Asked {
  if (process.cookRuleSetId === null) return { state: 'cannot-tell', reason: 'cook.no-rule-set' };
  const ruleSet = cookRuleSet(process.cookRuleSetId);
  if (!ruleSet) return { state: 'cannot-tell', reason: 'cook.rule-set-unknown' };
  if (process.cookLimitId === null) return { state: 'cannot-tell', reason: 'cook.no-limit' };
  const limit = cookLimit(ruleSet, process.cookLimitId);
  if (!limit) return { state: 'cannot-tell', reason: 'cook.limit-unknown' };
  const resolved = resolveLimit(limit, facts);
  return resolved.ok ? resolved : { state: resolved.state, reason: resolved.reason };
}

function missingInputs(values: CookValues, process: ProcessSlice): MissingInput[] {
  const missing: MissingInput[] = [];
  const need = (field: string) => missing.push({ field, neededFor: 'cook.hold' });
  if (values.ruleSet === null) need('process.cookRuleSetId');
  else if (values.limit === null) need('process.cookLimitId');
  if (values.limit?.serves !== 'any' && values.facts.hasPoultry === null) need('formula.lines');
  if (process.logs.length === 0) need('process.logs');
  for (const { logId, log, readings } of values.logs) {
    if (log.offsetC === null) need(`process.logs.${logId}.offset`);
    if (log.errorC === null) need(`process.logs.${logId}.error`);
    if (readings.length === 0) need(`process.logs.${logId}.readings`);
  }
  return missing;
}

/** What a sentence about the hold needs. */
function holdParams(values: CookValues, ruling: CookLogResult | undefined): Params {
  const { limit, hold, ruleSet } = values;
  const judged = ruling?.hold ?? null;
  return {
    ...(ruleSet ? { ruleSet: ruleSet.title, jurisdiction: ruleSet.jurisdiction } : {}),
    ...(limit ? { limitId: limit.id, limit: formatLimitTemp(limit.stated, 'minimum').text } : {}),
    ...(hold ? { hold: hold.printed, holdS: hold.s } : {}),
    ...(ruling ? { log: ruling.name } : {}),
    ...(judged ? { countedS: judged.countedS, remainingS: judged.remainingS } : {}),
    ...(judged?.actionC == null ? {} : { actionC: judged.actionC }),
    ...(judged?.peakC == null ? {} : { peakC: judged.peakC }),
  };
}

/**
 * The cook judged by the one limit the plan names, on readings alone, the worst of all logs ruling. Straight lines
 * between readings, pasteurisation values and other pairs met stand beside it and change nothing.
 *
 * @param slices steps, logs and the limit named
 * @param facts what the product is; `cookFacts` draws them from a formula
 */
export function cookStage(
  slices: { readonly process: ProcessSlice },
  facts: CookFacts = UNKNOWN_FACTS,
): StageResult<CookValues, CookFindingId> {
  const { process } = slices;
  const phases = phasesOf(process.steps);
  const asked = askedOf(process, facts);
  const logs = process.logs.map((log) => judgeLog(log, process, phases, asked));
  const ruling = worstOf(logs);
  const ruleSet = cookRuleSet(process.cookRuleSetId) ?? null;
  const limit = cookLimit(ruleSet ?? undefined, process.cookLimitId) ?? null;
  const values: CookValues = {
    ruleSet,
    limit,
    hold: 'limit' in asked ? asked.hold : null,
    facts,
    heatOver: phases.some((phase) => phase.kind === 'cook' && phase.heatOver),
    logs,
    rulingLogId: ruling?.logId ?? null,
  };
  const verdict: Verdict<CookFindingId> = {
    id: 'cook.hold',
    stage: 'cook',
    state: 'limit' in asked ? (ruling?.state ?? 'cannot-tell') : asked.state,
    reason: 'limit' in asked ? (ruling?.reason ?? 'cook.no-log') : asked.reason,
    params: holdParams(values, ruling),
    basis: limit?.source ?? ruleSet?.sources.at(0) ?? null,
    mark: limit?.mark ?? ruleSet?.mark ?? null,
    ...(ruling ? { subjectId: ruling.logId } : {}),
  };
  return {
    values,
    findings: cookFindings(values, process, phases),
    verdicts: [verdict],
    missing: missingInputs(values, process),
  };
}
