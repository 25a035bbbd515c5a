import type { Finding, MissingInput, StageResult, Verdict } from '../findings/index.ts';
import type { ProbeLog } from '../process/index.ts';
import { entryValue } from '../quantities/index.ts';
import {
  type CheckedThermometer,
  type CheckReason,
  type CheckRequest,
  checkThermometer,
} from './check-thermometer.ts';
import { ALTITUDE_M, type LocalBoil, localBoil } from './local-boil.ts';
import type { ThermometerSlice } from './slice.ts';

export type ThermometerFindingId =
  | CheckReason
  | 'thermometer.boil-unknown'
  | 'thermometer.one-point'
  | 'thermometer.place-unusable'
  | 'thermometer.error-blank';

export interface ThermometerValues {
  readonly boil: LocalBoil | null;
  readonly toleranceC: number | null;
  readonly checked: readonly CheckedThermometer[];
}

const MM_PER_M = 1000;

/** What all thermometers of a kitchen share. */
export function placeOf(slice: ThermometerSlice): Omit<CheckRequest, 'days'> {
  // Heights are beyond what a length in a kitchen may be.
  const range = { min: ALTITUDE_M.min * MM_PER_M, max: ALTITUDE_M.max * MM_PER_M };
  const millimetres = entryValue('length', slice.altitude, { range });
  const goodForMin = entryValue('time', slice.goodFor);
  const toleranceC = entryValue('temperature-difference', slice.tolerance);
  return {
    boil: localBoil(
      entryValue('pressure', slice.pressure),
      millimetres === null ? null : millimetres / MM_PER_M,
    ),
    toleranceC: toleranceC !== null && toleranceC > 0 ? toleranceC : null,
    goodForDays: goodForMin === null ? null : goodForMin / 1440,
  };
}

const MINE = 'thermometers.thermometers';

function findingsOf(
  checked: CheckedThermometer,
  boil: LocalBoil | null,
  toleranceC: number | null,
): Finding<ThermometerFindingId>[] {
  const { id, name, iceOffsetC, boilOffsetC, boilC, errorC, reason } = checked;
  const about = { stage: 'thermometer', basis: 'thermometer-check', caution: 'thermometer-check' } as const;
  const out: Finding<ThermometerFindingId>[] = [];
  if (reason === 'thermometer.check-failed') {
    const overIce = Math.abs(iceOffsetC ?? 0) >= Math.abs(boilOffsetC ?? 0);
    const offsetC = (overIce ? iceOffsetC : boilOffsetC) ?? 0;
    const params = { name, offsetC, toleranceC: toleranceC ?? 0, where: overIce ? 'ice' : 'boil' };
    out.push({
      ...about,
      id: reason,
      severity: 'stop',
      field: `${MINE}.${id}.${overIce ? 'ice' : 'boil'}`,
      params,
    });
  }
  if (reason === 'thermometer.check-old' || reason === 'thermometer.no-date')
    out.push({
      ...about,
      id: reason,
      severity: 'caution',
      field: `${MINE}.${id}.checkedOn`,
      params: { name, ...(checked.dueOn === null ? {} : { dueOn: checked.dueOn }) },
    });
  if (boilC !== null && boil === null)
    out.push({
      ...about,
      id: 'thermometer.boil-unknown',
      severity: 'note',
      field: `${MINE}.${id}.boil`,
      params: { name },
    });
  if (reason === 'thermometer.check-met' && (iceOffsetC === null || boilOffsetC === null))
    out.push({
      ...about,
      id: 'thermometer.one-point',
      severity: 'note',
      field: `${MINE}.${id}.${iceOffsetC === null ? 'ice' : 'boil'}`,
      params: { name, where: iceOffsetC === null ? 'boil' : 'ice' },
    });
  if (reason === 'thermometer.check-met' && errorC === null)
    out.push({
      ...about,
      id: 'thermometer.error-blank',
      severity: 'note',
      field: `${MINE}.${id}.error`,
      params: { name },
    });
  return out;
}

function verdictOf(checked: CheckedThermometer, toleranceC: number | null): Verdict<ThermometerFindingId> {
  const { id, name, state, reason, iceOffsetC, boilOffsetC, dueOn } = checked;
  return {
    id: `thermometer.check.${id}`,
    stage: 'thermometer',
    state,
    reason,
    params: {
      name,
      ...(toleranceC === null ? {} : { toleranceC }),
      ...(iceOffsetC === null ? {} : { iceOffsetC }),
      ...(boilOffsetC === null ? {} : { boilOffsetC }),
      ...(dueOn === null ? {} : { dueOn }),
    },
    basis: 'thermometer-check',
    mark: 'common-practice',
    subjectId: id,
  };
}

/**
 * The check of the kitchen's thermometers.
 *
 * @param days ISO days on which each is asked to be good, by its id; today for one no log names
 */
export function thermometerStage(
  slice: ThermometerSlice,
  {
    today,
    days = new Map(),
  }: { readonly today: string; readonly days?: ReadonlyMap<string, readonly string[]> },
): StageResult<ThermometerValues, ThermometerFindingId> {
  const place = placeOf(slice);
  const checked = slice.thermometers.map((thermometer) =>
    checkThermometer(thermometer, { ...place, days: days.get(thermometer.id) ?? [today] }),
  );
  const { boil, toleranceC } = place;
  const placed = slice.altitude.text.trim() !== '' || slice.pressure.text.trim() !== '';
  const unusable: Finding<ThermometerFindingId>[] =
    placed && boil === null
      ? [
          {
            id: 'thermometer.place-unusable',
            severity: 'caution',
            stage: 'thermometer',
            field: slice.pressure.text.trim() !== '' ? 'thermometers.pressure' : 'thermometers.altitude',
            params: {},
          },
        ]
      : [];
  const missing: MissingInput[] = checked.flatMap(({ id, iceC, boilC }) => [
    ...(iceC === null ? [{ field: `${MINE}.${id}.ice`, neededFor: 'thermometer.check' }] : []),
    ...(boilC === null ? [{ field: `${MINE}.${id}.boil`, neededFor: 'thermometer.check' }] : []),
  ]);
  return {
    values: { boil, toleranceC, checked },
    findings: [...unusable, ...checked.flatMap((one) => findingsOf(one, boil, toleranceC))],
    verdicts: checked.map((one) => verdictOf(one, toleranceC)),
    missing,
  };
}

/** Days on which a log was read, ISO, first and last. */
export function daysOf({ readings }: ProbeLog): string[] {
  const days = readings.map(({ at }) => at.slice(0, 10)).sort();
  return [days.at(0), days.at(-1)].filter((day) => day !== undefined);
}

/** Days on which each thermometer was read in a log, by its id. */
export function daysByThermometer(logs: readonly ProbeLog[]): Map<string, readonly string[]> {
  const days = new Map<string, readonly string[]>();
  for (const log of logs) {
    const read = daysOf(log);
    if (log.thermometerId && read.length > 0)
      days.set(log.thermometerId, [...(days.get(log.thermometerId) ?? []), ...read]);
  }
  return days;
}
