import type { ProbeLog, ProbeReading } from '../process/index.ts';

/** A log as it was when it was checked, and what came of it. */
interface Checked<Result> {
  readonly told: readonly unknown[];
  readonly readings: readonly (readonly unknown[])[];
  readonly result: Result;
}

/** Answers kept for one log: the cook asks with its hottest medium, the record without. */
const MOST_KEPT = 2;

/** All that the check of a log looks at besides its readings. */
function toldOf({ id, offset, error, line }: ProbeLog, hottestMediumC: number | null): unknown[] {
  const { iceShownC = null, boilShownC = null, boilsAtC = null } = line ?? {};
  return [
    id,
    offset.text,
    offset.unit,
    error.text,
    error.unit,
    iceShownC,
    boilShownC,
    boilsAtC,
    hottestMediumC,
  ];
}

/** All that it looks at in a reading. */
function factsOf({ id, at, temperature, enteredAt, excluded }: ProbeReading): unknown[] {
  return [
    id,
    at,
    temperature.text,
    temperature.unit,
    enteredAt,
    excluded,
    excluded?.reason,
    excluded?.initials,
  ];
}

const same = (a: readonly unknown[], b: readonly unknown[]) =>
  a.length === b.length && a.every((value, index) => Object.is(value, b[index]));

/** Compares field by field without making anything: it runs over every reading with every edit. */
function sameReading(facts: readonly unknown[], reading: ProbeReading): boolean {
  const { id, at, temperature, enteredAt, excluded } = reading;
  return (
    facts[0] === id &&
    facts[1] === at &&
    facts[2] === temperature.text &&
    facts[3] === temperature.unit &&
    facts[4] === enteredAt &&
    facts[5] === excluded &&
    facts[6] === excluded?.reason &&
    facts[7] === excluded?.initials
  );
}

/**
 * The check of a log, made once for as long as nothing it looks at changes. Three subjects ask for it with every edit of
 * a batch, and a log may hold a hundred thousand readings. What was asked is compared text by text, never by trust that
 * a list stays as it was.
 */
export function checkedOnce<Result>(
  check: (log: ProbeLog, hottestMediumC: number | null) => Result,
): (log: ProbeLog, hottestMediumC: number | null) => Result {
  const kept = new WeakMap<readonly ProbeReading[], readonly Checked<Result>[]>();
  return (log, hottestMediumC) => {
    const told = toldOf(log, hottestMediumC);
    const before = kept.get(log.readings) ?? [];
    const found = before.find(
      (one) =>
        same(one.told, told) &&
        one.readings.length === log.readings.length &&
        log.readings.every((reading, index) => sameReading(one.readings[index] ?? [], reading)),
    );
    if (found) return found.result;
    const fresh = { told, readings: log.readings.map(factsOf), result: check(log, hottestMediumC) };
    kept.set(log.readings, [fresh, ...before.filter((one) => !same(one.told, told))].slice(0, MOST_KEPT));
    return fresh.result;
  };
}
