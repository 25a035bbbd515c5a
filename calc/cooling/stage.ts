import type { MissingInput, StageResult, Verdict } from '../findings/index.ts';
import { worstOf } from '../probe-log/index.ts';
import { type Phase, type ProcessSlice, phasesOf } from '../process/index.ts';
import { coolFindings, legParams } from './cool-findings.ts';
import type { CoolLeg, CoolRuleSet } from './cool-leg.ts';
import { type CoolFacts, UNKNOWN_COOL_FACTS } from './cured.ts';
import type { CoolFindingId } from './finding-ids.ts';
import { curedFor, judgeCoolLog } from './judge-log.ts';
import { coolRuleSet } from './rule-sets/index.ts';
import type { CoolingResult, CoolValues, LegResult } from './values.ts';

const MS_PER_MIN = 60_000;

type CoolVerdict = Verdict<CoolFindingId>;

/** `cool.leg.135F-70F`; a later cooling of the same batch, after a reheat, carries its number. */
function verdictId(number: number, leg: string): string {
  return number === 1 ? `cool.leg.${leg}` : `cool.${number}.leg.${leg}`;
}

function legResultParams({ judged, leg }: LegResult): Record<string, string | number> {
  const { worstMin, lines } = judged;
  return {
    ...legParams(leg),
    ...(worstMin === null ? {} : { worstMin }),
    ...(lines === null ? {} : { lineMin: lines.elapsedMin, lineState: lines.state }),
  };
}

/** One verdict for a leg of one cooling, the worst log ruling. */
function legVerdict(cooling: CoolingResult, leg: CoolLeg, ruleSet: CoolRuleSet): CoolVerdict {
  const found = cooling.logs.flatMap((log) => {
    const result = log.legs.find((one) => one.leg.id === leg.id);
    return result ? [{ ...result, logId: log.logId, name: log.name }] : [];
  });
  const ruling = worstOf(found);
  const shared = {
    id: verdictId(cooling.number, leg.id),
    stage: 'cool',
    basis: ruleSet.sources.at(0) ?? null,
    mark: leg.mark,
  } as const;
  const about = { ruleSet: ruleSet.title, jurisdiction: ruleSet.jurisdiction, cooling: cooling.number };
  if (!ruling)
    return {
      ...shared,
      state: 'cannot-tell',
      reason: 'cool.no-log',
      params: { ...about, ...legParams(leg) },
    };
  const params = { ...about, log: ruling.name, ...legResultParams(ruling) };
  return { ...shared, state: ruling.state, reason: ruling.reason, params, subjectId: ruling.logId };
}

/** Whether chilling began soon enough after heating, for the sets that ask. */
function chillStartVerdict(phase: Phase | undefined, number: number, ruleSet: CoolRuleSet): CoolVerdict[] {
  if (ruleSet.chillStartMaxMin === undefined) return [];
  const { heatEndMs = null, chillStartMs = null } = phase ?? {};
  const waitMin =
    heatEndMs === null || chillStartMs === null ? null : (chillStartMs - heatEndMs) / MS_PER_MIN;
  const late = waitMin !== null && waitMin > ruleSet.chillStartMaxMin;
  return [
    {
      id: number === 1 ? 'cool.chill-start' : `cool.${number}.chill-start`,
      stage: 'cool',
      state: waitMin === null ? 'cannot-tell' : late ? 'fail' : 'pass',
      reason:
        waitMin === null
          ? 'cool.chill-start-unknown'
          : late
            ? 'cool.chill-start-late'
            : 'cool.chill-start-met',
      params: { maxMin: ruleSet.chillStartMaxMin, ...(waitMin === null ? {} : { waitMin }) },
      basis: ruleSet.sources.at(0) ?? null,
      mark: ruleSet.mark,
    },
  ];
}

function missingInputs(process: ProcessSlice, values: CoolValues): MissingInput[] {
  const missing: MissingInput[] = [];
  const need = (field: string) => missing.push({ field, neededFor: 'cool.legs' });
  if (values.ruleSet === null) need('process.coolRuleSetId');
  if (process.logs.length === 0) need('process.logs');
  if (values.cured === 'unknown') need('formula.lines');
  for (const log of values.coolings.at(0)?.logs ?? []) {
    if (log.log.offsetC === null) need(`process.logs.${log.logId}.offset`);
    if (log.log.errorC === null) need(`process.logs.${log.logId}.error`);
  }
  const fromEnd = values.ruleSet?.legs.some(({ from }) => from === null) ?? false;
  const cook = process.steps.findLast((step) => step.kind !== 'chill');
  const [first] = values.coolings;
  if (fromEnd && first?.heatEndMs === null) need(cook ? `process.steps.${cook.id}.endedAt` : 'process.steps');
  return missing;
}

/**
 * The cooling judged leg by leg by the rule set a person chose, on readings alone, the worst log ruling each leg.
 * Legs lend no time to each other; a reheat opens a cooling of its own with verdicts of its own. A set for cured
 * products fails where the cure is known to be too weak and cannot tell where it is unknown.
 *
 * Readings after the end of the chill, where it is written down, are storage and no longer judged.
 *
 * @param facts what the cure came to; `coolFacts` draws them from the cure's values
 */
export function coolStage(
  slices: { readonly process: ProcessSlice },
  facts: CoolFacts = UNKNOWN_COOL_FACTS,
): StageResult<CoolValues, CoolFindingId> {
  const { process } = slices;
  const ruleSet = coolRuleSet(process.coolRuleSetId) ?? null;
  const phases = phasesOf(process.steps);
  const cured = ruleSet === null ? null : curedFor(ruleSet, facts);
  // A reheat that is served hot has no chill and no cooling to judge; the first heating always has.
  const coolings = phases.flatMap((phase, index): CoolingResult[] => {
    if (index > 0 && !phase.steps.some((step) => step.kind === 'chill')) return [];
    const logs =
      ruleSet === null
        ? []
        : process.logs.map((log) => judgeCoolLog(log, process, phases, index, ruleSet, cured));
    return [{ number: index + 1, heatEndMs: phase.heatEndMs, logs }];
  });
  const values: CoolValues = { ruleSet, facts, cured, coolings };
  const isOver = (number: number) => phases[number - 1]?.chillEndMs != null;
  const reason = process.coolRuleSetId === null ? 'cool.no-rule-set' : 'cool.rule-set-unknown';
  const verdicts =
    ruleSet === null
      ? [
          {
            id: 'cool.legs',
            stage: 'cool',
            state: 'cannot-tell',
            reason,
            params: {},
            basis: null,
            mark: null,
          } as const,
        ]
      : coolings.flatMap((cooling) => [
          ...ruleSet.legs.map((leg) => legVerdict(cooling, leg, ruleSet)),
          ...chillStartVerdict(phases[cooling.number - 1], cooling.number, ruleSet),
        ]);
  return {
    values,
    findings: coolFindings(values, isOver),
    verdicts,
    missing: missingInputs(process, values),
  };
}
