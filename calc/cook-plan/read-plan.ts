import type { MissingInput } from '../findings/index.ts';
import type { Adjustment } from '../heat/index.ts';
import { type Entry, entryValue, type QuantityKind, readEntry } from '../quantities/index.ts';
import { usualWallMm } from './coat.ts';
import type { ChillLeg, CookMethod, CookPlanSlice } from './slice.ts';

/** A stage of the chill, read. */
export interface ChillReading {
  readonly leg: ChillLeg;
  readonly tempC: number | null;
  /** Blank: until the core reads `untilC`. */
  readonly minutes: number | null;
  readonly untilC: number | null;
}

/** The plan's fields in °C, mm, g and min. Null: blank or unreadable. */
export interface PlanReading {
  readonly wallMm: number | null;
  readonly startC: number | null;
  /** Oven, steam or kettle, by the method. */
  readonly mediumC: number | null;
  readonly bathWaterG: number | null;
  readonly bathStartC: number | null;
  readonly panLengthMm: number | null;
  readonly panWidthMm: number | null;
  readonly panHeightMm: number | null;
  readonly mouldsInPan: number | null;
  /** As typed, over the outside of the mould's base; null when blank. */
  readonly levelMm: number | null;
  readonly altitudeM: number | null;
  /** The oven record, as the engine adjusts its stages. Null: a figure cannot be read. */
  readonly oven: Adjustment | null;
  readonly restMin: number | null;
  readonly roomC: number | null;
  readonly pressMin: number;
  readonly pressAirC: number | null;
  readonly chill: readonly ChillReading[];
  readonly missing: readonly MissingInput[];
}

/** What the curve cannot be computed without. */
const NEEDED = 'cook-plan.curve';

const MEDIUM: Readonly<Record<CookMethod, 'oven' | 'steam' | 'kettle'>> = {
  bath: 'oven',
  oven: 'oven',
  steam: 'steam',
  poach: 'kettle',
};

/** Which field holds the temperature that surrounds the mould. */
export function mediumField(method: CookMethod): 'oven' | 'steam' | 'kettle' {
  return MEDIUM[method];
}

/** Reads the fields of a plan and tells which are missing for its curve. */
export function readPlan(slice: CookPlanSlice): PlanReading {
  const missing: MissingInput[] = [];
  const need = (kind: QuantityKind, field: string, entry: Entry): number | null => {
    const value = entryValue(kind, entry);
    if (value === null) missing.push({ field: `cookPlan.${field}`, neededFor: NEEDED });
    return value;
  };
  /** Blank is allowed; a text that cannot be read is not. */
  const may = (kind: QuantityKind, field: string, entry: Entry): number | null => {
    const reading = readEntry(kind, entry);
    if (reading.state === 'bad') missing.push({ field: `cookPlan.${field}`, neededFor: NEEDED });
    return reading.state === 'ok' ? reading.value : null;
  };
  const bath = slice.method === 'bath';
  const medium = mediumField(slice.method);
  const pressMin = may('time', 'press', slice.press) ?? 0;
  return {
    wallMm:
      readEntry('length', slice.wall).state === 'blank'
        ? usualWallMm(slice.vessel)
        : need('length', 'wall', slice.wall),
    startC: need('temperature', 'start', slice.start),
    mediumC: need('temperature', medium, slice[medium]),
    bathWaterG: bath ? above(need('mass', 'bathWater', slice.bathWater)) : null,
    bathStartC: bath ? need('temperature', 'bathStart', slice.bathStart) : null,
    panLengthMm: bath ? need('length', 'panLength', slice.panLength) : null,
    panWidthMm: bath ? need('length', 'panWidth', slice.panWidth) : null,
    panHeightMm: bath ? need('length', 'panHeight', slice.panHeight) : null,
    mouldsInPan: bath ? above(need('count', 'mouldsInPan', slice.mouldsInPan)) : null,
    levelMm: bath || slice.method === 'poach' ? may('length', 'level', slice.level) : null,
    altitudeM: altitudeOf(slice.altitude, missing),
    oven: ovenOf(slice.ovenRecord, need),
    restMin: need('time', 'rest', slice.rest),
    roomC: need('temperature', 'room', slice.room),
    pressMin,
    pressAirC: pressMin > 0 ? need('temperature', 'pressAir', slice.pressAir) : null,
    chill: slice.chill.map((leg) => readChill(leg, need, may)),
    missing,
  };
}

const above = (value: number | null) => (value !== null && value > 0 ? value : null);

/** Heights of kitchens above the sea, mm: far beyond what a length in a kitchen may be. */
const HEIGHTS_MM = { min: -400_000, max: 5_500_000 };

function altitudeOf(entry: Entry, missing: MissingInput[]): number | null {
  const mm = entryValue('length', entry, { range: HEIGHTS_MM });
  if (mm === null) missing.push({ field: 'cookPlan.altitude', neededFor: NEEDED });
  return mm === null ? null : mm / 1000;
}

/** A record is believed within these: beyond them something else was wrong that day. */
const BELIEVED = { factor: 10, shiftC: 40 } as const;

function ovenOf({ films, heating, shift }: CookPlanSlice['ovenRecord'], need: Reader): Adjustment | null {
  const filmFactor = need('ratio', 'ovenRecord.films', films);
  const heatingFactor = need('ratio', 'ovenRecord.heating', heating);
  const mediumShiftC = need('temperature-difference', 'ovenRecord.shift', shift);
  if (filmFactor === null || heatingFactor === null || mediumShiftC === null) return null;
  const believed = (factor: number) => factor <= BELIEVED.factor && factor >= 1 / BELIEVED.factor;
  if (!believed(filmFactor) || !believed(heatingFactor) || Math.abs(mediumShiftC) > BELIEVED.shiftC)
    return null;
  return { filmFactor, heatingFactor, mediumShiftC };
}

type Reader = (kind: QuantityKind, field: string, entry: Entry) => number | null;

function readChill(leg: ChillLeg, need: Reader, may: Reader): ChillReading {
  const path = `chill.${leg.id}`;
  const minutes = may('time', `${path}.minutes`, leg.minutes);
  return {
    leg,
    tempC: need('temperature', `${path}.temp`, leg.temp),
    minutes,
    untilC: minutes === null ? need('temperature', `${path}.until`, leg.until) : null,
  };
}
