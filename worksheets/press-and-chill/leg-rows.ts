import type { CoolingResult, CoolLeg, CoolValues } from '@larderwright/calc/cooling';
import type { Verdict, VerdictState } from '@larderwright/calc/findings';

/** One probe in one leg. Times are epoch ms. */
export interface LegProbe {
  readonly logId: string;
  readonly name: string;
  readonly state: VerdictState;
  /** By when the end must be shown; null until the clock has started. */
  readonly latestMs: number | null;
  /** Longest time the readings allow, min. */
  readonly worstMin: number | null;
  /** By straight lines between readings, min; information only. */
  readonly lineMin: number | null;
  /** When it is expected there at the present pace; null where the readings do not show it. */
  readonly projectedMs: number | null;
}

/** One leg of one cooling with its verdict and every probe. The one that rules stands first. */
export interface LegRow {
  readonly key: string;
  readonly cooling: number;
  readonly leg: CoolLeg;
  readonly verdict: Verdict;
  readonly probes: readonly LegProbe[];
  /** The worst of all probes: earliest deadline, longest times, latest arrival. Null where one is not known. */
  readonly latestMs: number | null;
  readonly worstMin: number | null;
  readonly lineMin: number | null;
  readonly projectedMs: number | null;
}

/** The largest of what every probe gives; null as soon as one gives nothing. */
function largest(values: readonly (number | null)[]): number | null {
  return values.length === 0 || values.includes(null) ? null : Math.max(...values.map((value) => value ?? 0));
}

function worstOfProbes(
  probes: readonly LegProbe[],
): Pick<LegRow, 'latestMs' | 'worstMin' | 'lineMin' | 'projectedMs'> {
  const deadlines = probes.flatMap(({ latestMs }) => latestMs ?? []);
  const arrivals = probes.flatMap(({ projectedMs }) => projectedMs ?? []);
  return {
    latestMs: deadlines.length === 0 ? null : Math.min(...deadlines),
    worstMin: largest(probes.map(({ worstMin }) => worstMin)),
    lineMin: largest(probes.map(({ lineMin }) => lineMin)),
    projectedMs: arrivals.length === 0 ? null : Math.max(...arrivals),
  };
}

function probesOf(
  { logs }: CoolingResult,
  leg: CoolLeg,
  rulingId: string | undefined,
  names: ReadonlyMap<string, string>,
): LegProbe[] {
  const probes = logs.flatMap(({ logId, legs }): LegProbe[] => {
    const found = legs.find((one) => one.leg.id === leg.id);
    if (!found) return [];
    const { judged, state, projectedMs } = found;
    return [
      {
        logId,
        name: names.get(logId) ?? logId,
        state,
        latestMs: judged.deadlineMs,
        worstMin: judged.worstMin,
        lineMin: judged.lines?.elapsedMin ?? null,
        projectedMs,
      },
    ];
  });
  return probes.toSorted((a, b) => Number(b.logId === rulingId) - Number(a.logId === rulingId));
}

/** Every leg of every cooling, in the order of the rule. */
export function legRows(
  { ruleSet, coolings }: CoolValues,
  verdicts: readonly Verdict[],
  names: ReadonlyMap<string, string>,
): LegRow[] {
  const legs = ruleSet?.legs ?? [];
  return coolings.flatMap((cooling) =>
    legs.flatMap((leg): LegRow[] => {
      const id = cooling.number === 1 ? `cool.leg.${leg.id}` : `cool.${cooling.number}.leg.${leg.id}`;
      const verdict = verdicts.find((one) => one.id === id);
      if (!verdict) return [];
      const probes = probesOf(cooling, leg, verdict.subjectId, names);
      return [{ key: id, cooling: cooling.number, leg, verdict, probes, ...worstOfProbes(probes) }];
    }),
  );
}
