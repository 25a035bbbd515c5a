import type { Finding } from '../findings/index.ts';
import { inPhase, type Phase, type ProcessSlice } from '../process/index.ts';
import { formatLimitTemp } from '../quantities/index.ts';
import { COME_UP } from './come-up.ts';
import type { CookFindingId } from './finding-ids.ts';
import { HOLD_GAP_MIN, judgeHold, LINE_GAP_MIN } from './judge-hold.ts';
import { holdReadings } from './judge-log.ts';
import { type CookLimit, isByFat } from './limit.ts';
import { applicableLimits } from './resolve-limit.ts';
import { cookLimit, cookRuleSet } from './rule-sets/index.ts';
import type { CookLogResult, CookValues } from './values.ts';

type CookFinding = Finding<CookFindingId>;

const MS_PER_MIN = 60_000;
/** A probe this uncertain is not one to prove a hold with. House rule. */
const WIDE_ERROR_C = 2;
/** Strict pair against hepatitis E in pork liver. */
const HEV_PAIR = cookLimit(cookRuleSet('hev-advisory'), 'hev-71C-20min');

const readingField = (logId: string, readingId: string) => `process.logs.${logId}.readings.${readingId}`;

/** Whether one log meets a pair by its readings. */
function meets({ log, readings }: CookLogResult, limit: CookLimit, holdS: number): boolean {
  const request = {
    stated: limit.stated,
    holdS,
    errorC: log.errorC,
    offsetKnown: log.offsetC !== null,
    unitSuspect: log.unitSuspect,
    heatOver: true,
  };
  return judgeHold(holdReadings(readings), request).state === 'pass';
}

/**
 * Readings of the heating and of a hold carried over that cannot be, cannot be read, or were taken out without a
 * reason. Those of the chill are the cooling's to tell.
 */
function doubtFindings(
  { logId, name, readings, hold }: CookLogResult,
  heatEndMs: number | null,
): CookFinding[] {
  const holdEndMs = (hold?.run?.endMs ?? Number.NEGATIVE_INFINITY) + HOLD_GAP_MIN * MS_PER_MIN;
  const lastMs = Math.max(heatEndMs ?? Number.POSITIVE_INFINITY, holdEndMs);
  return readings.flatMap((reading): CookFinding[] => {
    if (reading.atMs > lastMs) return [];
    const about = { stage: 'cook', severity: 'caution', field: readingField(logId, reading.id) } as const;
    const params = { log: name, at: reading.at, shown: reading.shown, unit: reading.unit };
    const out: CookFinding[] = [];
    if (reading.exclusionIncomplete) out.push({ ...about, id: 'cook.exclusion-incomplete', params });
    if (reading.state === 'unreadable') out.push({ ...about, id: 'cook.reading-unreadable', params });
    if (reading.state === 'cannot-be' && reading.doubt !== null)
      out.push({
        ...about,
        id: 'cook.reading-cannot-be',
        params: { ...params, doubt: reading.doubt },
        basis: 'gauge-house-rules',
        caution: 'thermometer-check',
      });
    return out;
  });
}

/** Gaps where the hold would have to be shown, and gaps too long for anything. */
function gapFindings({ logId, name, readings, hold, state }: CookLogResult): CookFinding[] {
  const sound = readings.filter((reading) => reading.state === 'counts');
  const actionC = hold?.actionC ?? Number.POSITIVE_INFINITY;
  return sound.flatMap((reading, index): CookFinding[] => {
    const before = sound[index - 1];
    const gapMin = before ? (reading.atMs - before.atMs) / MS_PER_MIN : 0;
    if (!before || gapMin <= HOLD_GAP_MIN) return [];
    const hot = (before.tempC ?? 0) >= actionC || (reading.tempC ?? 0) >= actionC;
    if (!hot && gapMin <= LINE_GAP_MIN) return [];
    const id = hot ? 'cook.gap-at-limit' : 'cook.gap-long';
    const params = { log: name, gapMin, from: before.at, to: reading.at };
    return [
      {
        id,
        severity: hot && state !== 'pass' ? 'caution' : 'note',
        stage: 'cook',
        field: readingField(logId, reading.id),
        params,
      },
    ];
  });
}

function comeUpFindings({ logId, name, comeUp }: CookLogResult, isCondition: boolean): CookFinding[] {
  const about = { stage: 'cook', field: `process.logs.${logId}`, basis: 'fsis-cooking-conditions' } as const;
  if (comeUp.state === 'over') {
    const params = { log: name, minutes: comeUp.minutes ?? 0, limitMin: COME_UP.maxMin };
    return [{ ...about, id: 'cook.come-up-slow', severity: 'caution', params }];
  }
  const unknown = comeUp.state === 'unknown' && isCondition;
  return unknown ? [{ ...about, id: 'cook.come-up-not-shown', severity: 'note', params: { log: name } }] : [];
}

/** What the hold itself leaves to say: go on, carry-over did it, another pair is met. */
function holdFindings(result: CookLogResult, values: CookValues, heatEndMs: number | null): CookFinding[] {
  const { logId, name, hold, state, readings } = result;
  const about = { stage: 'cook', field: `process.logs.${logId}` } as const;
  if (!hold || !values.hold || !values.limit) return [];
  const limit = formatLimitTemp(values.limit.stated, 'minimum').text;
  if (state === 'pass') {
    const carried =
      heatEndMs !== null && hold.run !== null && heatEndMs - hold.run.startMs < values.hold.s * 1000;
    const params = {
      log: name,
      limit,
      countedS: hold.countedS,
      ...(hold.peakC === null ? {} : { peakC: hold.peakC }),
    };
    return carried ? [{ ...about, id: 'cook.carry-over', severity: 'note', params }] : [];
  }
  const last = readings.findLast((reading) => reading.state === 'counts');
  const holding = last?.tempC != null && hold.run !== null && hold.run.endMs === last.atMs;
  const out: CookFinding[] = [];
  if (holding && hold.remainingS > 0) {
    const params = { log: name, limit, remainingS: hold.remainingS };
    out.push({ ...about, id: 'cook.keep-probe-in', severity: 'stop', params });
  }
  const others = values.ruleSet ? applicableLimits(values.ruleSet, values.facts) : [];
  const met = others.findLast(
    (other) => other.limit !== values.limit && meets(result, other.limit, other.hold.s),
  );
  if (met) {
    const params = {
      log: name,
      limit,
      other: formatLimitTemp(met.limit.stated, 'minimum').text,
      otherHold: met.hold.printed,
    };
    out.push({ ...about, id: 'cook.other-pair-met', severity: 'note', params });
  }
  return out;
}

/** What the product asks for beyond the limit named. */
function productFindings({ facts, limit, logs, ruleSet }: CookValues): CookFinding[] {
  const out: CookFinding[] = [];
  const field = 'process.cookLimitId';
  if (limit?.serves === 'no-poultry' && facts.hasPoultry === true) {
    const params = { limit: formatLimitTemp(limit.stated, 'minimum').text };
    out.push({
      id: 'cook.poultry-under-meat-limit',
      severity: 'stop',
      stage: 'cook',
      field,
      params,
      basis: limit.source,
      caution: 'poultry-cooked-through',
    });
  }
  if (facts.hasPorkLiver === true && HEV_PAIR && limit?.id !== HEV_PAIR.id) {
    const met = logs.length > 0 && logs.every((result) => meets(result, HEV_PAIR, 1200));
    out.push({
      id: met ? 'cook.pork-liver-met' : 'cook.pork-liver',
      severity: met ? 'note' : 'caution',
      stage: 'cook',
      field,
      params: { limit: formatLimitTemp(HEV_PAIR.stated, 'minimum').text, hold: '20 min' },
      basis: 'hev-barnaud-2012',
      caution: 'pork-liver-hepatitis-e',
    });
  }
  if (limit && isByFat(limit.hold) && facts.hasPoultry === true && facts.fatFraction !== null)
    out.push({
      id: 'cook.fat-as-mixed',
      severity: 'note',
      stage: 'cook',
      field,
      params: { fatFraction: facts.fatFraction },
      basis: limit.source,
    });
  for (const condition of ruleSet?.conditions ?? []) {
    const roast = condition === 'roast-oven' && limit?.form !== 'whole-roast';
    const game = condition === 'wild-game' && limit?.id === 'fc-165F';
    if (condition === 'come-up' || roast || game) continue;
    out.push({ id: `cook.condition-${condition}`, severity: 'note', stage: 'cook', field, params: {} });
  }
  return out;
}

/** Everything worth telling about the cook beside its verdict. */
export function cookFindings(
  values: CookValues,
  process: ProcessSlice,
  phases: readonly Phase[],
): CookFinding[] {
  const isCondition = values.ruleSet?.conditions.includes('come-up') ?? false;
  const heatEndMs = phases.findLast((phase) => phase.kind === 'cook')?.heatEndMs ?? null;
  const out = productFindings(values);
  for (const result of values.logs) {
    const { logId, name, log } = result;
    const about = { stage: 'cook', field: `process.logs.${logId}.error` } as const;
    out.push(
      ...holdFindings(result, values, heatEndMs),
      ...doubtFindings(result, heatEndMs),
      ...gapFindings(result),
    );
    out.push(...comeUpFindings(result, isCondition));
    if (log.errorC !== null && log.errorC > WIDE_ERROR_C)
      out.push({
        ...about,
        id: 'cook.error-wide',
        severity: 'caution',
        params: { log: name, errorC: log.errorC },
        caution: 'thermometer-check',
      });
    const outside = log.readings.filter(
      ({ atMs }) => !phases.some((_, index) => inPhase(phases, index, atMs)),
    );
    const [first] = outside;
    if (first)
      out.push({
        id: 'cook.outside-steps',
        severity: 'caution',
        stage: 'cook',
        field: `process.logs.${logId}`,
        params: { log: name, count: outside.length, at: first.at },
      });
  }
  if (phases.some((phase) => phase.kind === 'reheat') && process.logs.length > 0)
    out.push({
      id: 'cook.reheat-not-judged',
      severity: 'caution',
      stage: 'cook',
      params: {},
      basis: 'food-code-reheating',
    });
  return out;
}
