import type { VerdictState } from '../findings/index.ts';
import { entryValue } from '../quantities/index.ts';
import type { LocalBoil } from './local-boil.ts';
import type { Thermometer } from './slice.ts';

export type CheckReason =
  | 'thermometer.check-met'
  | 'thermometer.check-failed'
  | 'thermometer.not-checked'
  | 'thermometer.no-tolerance'
  | 'thermometer.no-date'
  | 'thermometer.check-old';

/** What the check of one thermometer comes to. Differences in °C, positive where it shows too much. */
export interface CheckedThermometer {
  readonly id: string;
  readonly name: string;
  readonly iceC: number | null;
  readonly boilC: number | null;
  readonly iceOffsetC: number | null;
  /** Null without a local boiling point. */
  readonly boilOffsetC: number | null;
  readonly boilsAtC: number | null;
  readonly stepC: number | null;
  /** Scale of its display: the one its step was told in. */
  readonly scale: 'C' | 'F';
  /** What it may still be off, never less than a step of its display; null while unknown. */
  readonly errorC: number | null;
  readonly state: VerdictState;
  readonly reason: CheckReason;
  /** Last day the check is good for, ISO date; null without a day and a term. */
  readonly dueOn: string | null;
}

export interface CheckRequest {
  readonly boil: LocalBoil | null;
  readonly toleranceC: number | null;
  readonly goodForDays: number | null;
  /** ISO days on which it is asked to be good: those of its log, or today. */
  readonly days: readonly string[];
}

const ICE_C = 0;
const MS_PER_DAY = 86_400_000;
/** Room for the last digit of a difference of converted readings. */
const EPSILON_C = 1e-9;

const dayMs = (iso: string) => Date.parse(`${iso.slice(0, 10)}T00:00:00Z`);
const isDay = (iso: string) => /^\d{4}-\d{2}-\d{2}/.test(iso) && Number.isFinite(dayMs(iso));

/** Whether a check is near enough to a day, before or after it: a check after the cook tells of the cook too. */
function isCurrent(checkedOn: string, goodForDays: number | null, days: readonly string[]): boolean {
  if (goodForDays === null) return false;
  return days.every(
    (day) => isDay(day) && Math.abs(dayMs(day) - dayMs(checkedOn)) <= goodForDays * MS_PER_DAY,
  );
}

function positive(value: number | null): number | null {
  return value !== null && value >= 0 ? value : null;
}

/** The check of one thermometer in ice and in boiling water. */
export function checkThermometer(
  thermometer: Thermometer,
  { boil, toleranceC, goodForDays, days }: CheckRequest,
): CheckedThermometer {
  const iceC = entryValue('temperature', thermometer.ice);
  const boilC = entryValue('temperature', thermometer.boil);
  const iceOffsetC = iceC === null ? null : iceC - ICE_C;
  const boilOffsetC = boilC === null || boil === null ? null : boilC - boil.tempC;
  const offsets = [iceOffsetC, boilOffsetC].filter((offset) => offset !== null);
  const stepC = positive(entryValue('temperature-difference', thermometer.step));
  const errorC = positive(entryValue('temperature-difference', thermometer.error));
  const dated = isDay(thermometer.checkedOn);
  const off = toleranceC !== null && offsets.some((offset) => Math.abs(offset) > toleranceC + EPSILON_C);
  const verdict = ((): [VerdictState, CheckReason] => {
    if (off) return ['fail', 'thermometer.check-failed'];
    if (offsets.length === 0) return ['cannot-tell', 'thermometer.not-checked'];
    if (toleranceC === null) return ['cannot-tell', 'thermometer.no-tolerance'];
    if (!dated) return ['cannot-tell', 'thermometer.no-date'];
    return isCurrent(thermometer.checkedOn, goodForDays, days)
      ? ['pass', 'thermometer.check-met']
      : ['cannot-tell', 'thermometer.check-old'];
  })();
  return {
    id: thermometer.id,
    name: thermometer.name.trim(),
    iceC,
    boilC,
    iceOffsetC,
    boilOffsetC,
    boilsAtC: boil?.tempC ?? null,
    stepC,
    scale: thermometer.step.unit === 'dF' ? 'F' : 'C',
    errorC: errorC === null ? null : Math.max(errorC, stepC ?? 0),
    state: verdict[0],
    reason: verdict[1],
    dueOn:
      dated && goodForDays !== null
        ? new Date(dayMs(thermometer.checkedOn) + goodForDays * MS_PER_DAY).toISOString().slice(0, 10)
        : null,
  };
}
