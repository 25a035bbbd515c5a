import type { Finding } from '../findings/index.ts';
import { isoLike } from '../process/index.ts';
import { formatLimitTemp } from '../quantities/index.ts';
import type { CoolLeg } from './cool-leg.ts';
import type { CoolFindingId } from './finding-ids.ts';
import type { CoolingResult, CoolLogResult, CoolValues, LegResult } from './values.ts';

type CoolFinding = Finding<CoolFindingId>;

const readingField = (logId: string, readingId: string) => `process.logs.${logId}.readings.${readingId}`;

/** What a sentence about a leg needs: its ends in words and its time. */
export function legParams({ from, to, maxMin }: CoolLeg): Record<string, string | number> {
  return {
    from: from === null ? '' : formatLimitTemp(from, 'maximum').text,
    to: formatLimitTemp(to, 'maximum').text,
    maxMin,
  };
}

function doubtFindings({ logId, name, readings }: CoolLogResult): CoolFinding[] {
  return readings.flatMap((reading): CoolFinding[] => {
    const about = { stage: 'cool', severity: 'caution', field: readingField(logId, reading.id) } as const;
    const params = { log: name, at: reading.at, shown: reading.shown, unit: reading.unit };
    const out: CoolFinding[] = [];
    if (reading.exclusionIncomplete) out.push({ ...about, id: 'cool.exclusion-incomplete', params });
    if (reading.state === 'unreadable') out.push({ ...about, id: 'cool.reading-unreadable', params });
    if (reading.state === 'cannot-be' && reading.doubt !== null)
      out.push({
        ...about,
        id: 'cool.reading-cannot-be',
        params: { ...params, doubt: reading.doubt },
        basis: 'cooling-house-rules',
        caution: 'thermometer-check',
      });
    return out;
  });
}

/** What a leg leaves to say: act by a clock, a miss in sight, too few readings, good practice. */
function legFindings(
  result: CoolLogResult,
  { leg, judged, projectedMs, state }: LegResult,
  isOver: boolean,
): CoolFinding[] {
  const { logId, name, readings } = result;
  const like = readings.at(0)?.at ?? '';
  const about = { stage: 'cool', field: `process.logs.${logId}`, basis: 'cooling-house-rules' } as const;
  const params = { log: name, ...legParams(leg) };
  const out: CoolFinding[] = [];
  const open = judged.endLatestMs === null && state !== 'fail' && !isOver && judged.deadlineMs !== null;
  if (open && judged.deadlineMs !== null) {
    const clocks = { ...params, deadlineAt: isoLike(judged.deadlineMs, like) };
    const late = projectedMs !== null && projectedMs > judged.deadlineMs;
    if (late)
      out.push({
        ...about,
        id: 'cool.will-miss',
        severity: 'stop',
        params: { ...clocks, expectedAt: isoLike(projectedMs, like) },
        caution: 'cooling-clock',
      });
    else
      out.push({ ...about, id: 'cool.act-by', severity: 'note', params: clocks, caution: 'cooling-clock' });
  }
  if (state === 'cannot-tell' && judged.reason === 'cool.too-close' && judged.worstMin !== null) {
    const lines =
      judged.lines === null ? {} : { lineMin: judged.lines.elapsedMin, lineState: judged.lines.state };
    out.push({
      ...about,
      id: 'cool.log-more-often',
      severity: 'note',
      params: { ...params, ...lines, worstMin: judged.worstMin },
    });
  }
  const took = judged.lines?.elapsedMin ?? judged.worstMin;
  if (leg.goodMin !== undefined && took !== null && took > leg.goodMin)
    out.push({
      ...about,
      id: 'cool.good-practice-missed',
      severity: 'note',
      params: { ...params, goodMin: leg.goodMin, tookMin: took },
    });
  return out;
}

function logFindings(result: CoolLogResult, cooling: CoolingResult, isOver: boolean): CoolFinding[] {
  const { logId, name, rewarmedC, legs, readings } = result;
  const out = doubtFindings(result);
  if (rewarmedC !== null)
    out.push({
      id: 'cool.rewarmed',
      severity: 'caution',
      stage: 'cool',
      field: `process.logs.${logId}`,
      params: { log: name, riseC: rewarmedC },
      caution: 'cooling-clock',
    });
  const assumed = legs.some(
    ({ leg, judged }) =>
      leg.from !== null &&
      judged.startEarliestMs !== null &&
      judged.startEarliestMs === cooling.heatEndMs &&
      readings.at(0)?.atMs !== cooling.heatEndMs,
  );
  const first = readings.at(0);
  if (assumed && first && cooling.heatEndMs !== null)
    out.push({
      id: 'cool.clock-assumed',
      severity: 'note',
      stage: 'cool',
      field: `process.logs.${logId}`,
      params: { log: name, startAt: isoLike(cooling.heatEndMs, first.at) },
      basis: 'cooling-house-rules',
    });
  return [...out, ...legs.flatMap((leg) => legFindings(result, leg, isOver))];
}

/** Everything worth telling about the cooling beside its verdicts. */
export function coolFindings(
  { coolings, ruleSet }: CoolValues,
  isOver: (number: number) => boolean,
): CoolFinding[] {
  const conditions = (ruleSet?.conditions ?? []).map(
    (condition): CoolFinding => ({
      id: `cool.condition-${condition}`,
      severity: 'note',
      stage: 'cool',
      field: 'process.coolRuleSetId',
      params: {},
    }),
  );
  const found = coolings.flatMap((cooling) =>
    cooling.logs.flatMap((log) => logFindings(log, cooling, isOver(cooling.number))),
  );
  return [...conditions, ...found];
}
