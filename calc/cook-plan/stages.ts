import {
  adjustStage,
  airStage,
  bathStage,
  boilingPointC,
  type HeatStage,
  ovenPan,
  pressureAtKPa,
  type StageEnd,
  waterLevelMm,
  waterStage,
} from '../heat/index.ts';
import type { MouldBody } from './body.ts';
import { baseMm, type Coat, coverResistance } from './coat.ts';
import type { ChillReading, PlanReading } from './read-plan.ts';
import type { CookPlanSlice } from './slice.ts';

export type PlanStageKind = 'cook' | 'hold' | 'rest' | 'press' | 'chill';

/** One stage of the plan with what the engine makes of it. */
export interface PlanStage {
  readonly kind: PlanStageKind;
  /** Row of the chill it comes from. */
  readonly legId: string | null;
  readonly heat: HeatStage;
}

/** Longest a cook is followed to its target, and a chill to its end, min. */
export const MOST_COOK_MIN = 720;
const MOST_CHILL_MIN = 1800;
/** A kettle's water stands this far over what is poached in it, mm. */
const KETTLE_OVER_MM = 20;
/** The least water that still wets the base, mm over the mix: a mould that stands in any is wet beneath. */
const WET_BASE_MM = 0.01;

export interface StageInput {
  readonly slice: CookPlanSlice;
  readonly reading: PlanReading;
  readonly body: MouldBody;
  readonly coat: Coat;
  /** Core at which the hold begins, °C, and its length, min. */
  readonly targetC: number;
  readonly holdMin: number;
  /** A pie: its outside is dry pastry. */
  readonly crusted: boolean;
  /** The last stage of the chill is followed to here at least, °C: where the cooling rule set ends. */
  readonly followToC: number;
}

/** Plan of one mould with its wall, mm²: what it takes of the pan. */
function footprintMm2({ rim }: Pick<MouldBody, 'rim'>, wallMm: number): number {
  const grown = (rim.lengthMm + 2 * wallMm) * (rim.widthMm + 2 * wallMm);
  return rim.areaMm2 * (grown / (rim.lengthMm * rim.widthMm));
}

/** The water at the mould, mm over the outside of its base; null without a bath, or when the pan has no room left. */
export function bathLevelMm({ reading, body }: Pick<StageInput, 'reading' | 'body'>): number | null {
  const pan = panOf({ reading, body }, 'open');
  if (pan === null) return null;
  if (reading.levelMm !== null) return reading.levelMm;
  return pan.freeWaterM2 > 0 ? waterLevelMm(pan) : null;
}

/** One mould's share of the pan: by symmetry all moulds in it fare alike. */
function panOf(
  { reading, body }: Pick<StageInput, 'reading' | 'body'>,
  cover: 'covered' | 'open',
  fan: 'still' | 'fan' = 'still',
) {
  const { bathWaterG, panLengthMm, panWidthMm, panHeightMm, mouldsInPan, altitudeM, wallMm } = reading;
  if (bathWaterG === null || panLengthMm === null || panWidthMm === null || panHeightMm === null) return null;
  if (mouldsInPan === null || altitudeM === null || wallMm === null) return null;
  const whole = ovenPan({
    waterG: bathWaterG,
    covered: cover === 'covered',
    mouldPlanMm2: mouldsInPan * footprintMm2(body, wallMm),
    panLengthMm,
    panWidthMm,
    panHeightMm,
    altitudeM,
    fan: fan === 'fan',
  });
  return {
    ...whole,
    waterG: whole.waterG / mouldsInPan,
    heatedPanM2: whole.heatedPanM2 / mouldsInPan,
    freeWaterM2: whole.freeWaterM2 / mouldsInPan,
  };
}

/**
 * The stages of a plan in the order of the work: cook to the target, hold in the same heat, rest, press, chill.
 * Null while a temperature, a measure of the pan or a time is missing, or where the moulds leave no water in the pan.
 */
export function planStages(input: StageInput): PlanStage[] | null {
  const { reading, targetC, holdMin } = input;
  const cook = cookStage(input, { when: 'core-reaches', tempC: targetC, mostMin: MOST_COOK_MIN });
  if (cook === null || reading.restMin === null || reading.roomC === null) return null;
  const stages: PlanStage[] = [{ kind: 'cook', legId: null, heat: cook }];
  if (holdMin > 0) stages.push({ kind: 'hold', legId: null, heat: continued(cook, holdMin) });
  if (reading.restMin > 0)
    stages.push({
      kind: 'rest',
      legId: null,
      heat: airStage('rest', reading.roomC, { when: 'time', minutes: reading.restMin }),
    });
  if (reading.pressMin > 0) {
    if (reading.pressAirC === null) return null;
    const air = airStage('refrigerate', reading.pressAirC, { when: 'time', minutes: reading.pressMin });
    // A wooden board and its load let next to nothing through.
    stages.push({ kind: 'press', legId: null, heat: { ...air, kind: 'press', faces: { top: 'closed' } } });
  }
  for (const [index, chill] of reading.chill.entries()) {
    const last = index === reading.chill.length - 1;
    const heat = chillStage(last ? followed(chill, input.followToC) : chill, input);
    if (heat === null) return null;
    stages.push({ kind: 'chill', legId: chill.leg.id, heat });
  }
  return stages;
}

/** The same heat for so many minutes more, the bath as it has become. */
function continued(cook: HeatStage, minutes: number): HeatStage {
  const { water } = cook;
  const end = { when: 'time', minutes } as const;
  if (water?.bath.kind !== 'oven') return { ...cook, end };
  return { ...cook, end, water: { ...water, bath: { ...water.bath, startC: null } } };
}

function cookStage(input: StageInput, end: StageEnd): HeatStage | null {
  const { oven } = input.reading;
  const stage = oven && surroundedBy(input, end);
  return stage && adjustStage(wetFaces(stage, input), oven);
}

/**
 * A wet surface in the dry air of an oven is held near the boil by what evaporates from it: it is counted as standing
 * in air no hotter than that. A crust is dry, and what is covered does not dry out.
 */
function wetFaces(stage: HeatStage, { slice, reading, crusted }: StageInput): HeatStage {
  const { air, water } = stage;
  const covered = water?.bath.kind === 'oven' && water.bath.pan.covered;
  if (slice.method === 'poach' || covered || crusted || typeof air.tempC !== 'number') return stage;
  const boilC = boilingPointC(pressureAtKPa(reading.altitudeM ?? 0));
  const wet = { ...air, tempC: Math.min(air.tempC, boilC) };
  if (slice.vessel === 'none' && water === undefined) return { ...stage, air: wet };
  return slice.lid === 'open' ? { ...stage, faces: { top: wet } } : stage;
}

function surroundedBy({ slice, reading, body, coat }: StageInput, end: StageEnd): HeatStage | null {
  const { mediumC, altitudeM } = reading;
  if (mediumC === null || altitudeM === null) return null;
  if (slice.method === 'steam') return airStage('steam', mediumC, end);
  if (slice.method === 'oven') return airStage(slice.fan === 'fan' ? 'fan-oven' : 'oven', mediumC, end);
  if (slice.method === 'poach') {
    const over = reading.levelMm ?? baseMm(coat) + body.fillDepthMm + body.headspaceMm + KETTLE_OVER_MM;
    return waterStage('poach', mediumC, overMix(over, coat), mediumC, end);
  }
  const pan = panOf({ reading, body }, slice.cover, slice.fan);
  const level = bathLevelMm({ reading, body });
  if (pan === null || level === null || reading.bathStartC === null) return null;
  return bathStage(mediumC, reading.bathStartC, overMix(level, coat), pan, end);
}

/** A level over the mould's base as the engine counts it: over the base of the mix. */
function overMix(levelMm: number, coat: Coat): number {
  return levelMm > 0 ? Math.max(WET_BASE_MM, levelMm - baseMm(coat)) : 0;
}

/** The chill until the rule can be judged, where the air is cold enough to get there. */
function followed(chill: ChillReading, toC: number): ChillReading {
  const { untilC, tempC } = chill;
  return untilC === null || tempC === null || tempC >= toC
    ? chill
    : { ...chill, untilC: Math.min(untilC, toC) };
}

function chillStage(
  { leg, tempC, minutes, untilC }: ChillReading,
  { slice, reading, body }: StageInput,
): HeatStage | null {
  const end: StageEnd | null =
    minutes !== null
      ? { when: 'time', minutes }
      : untilC === null
        ? null
        : { when: 'core-falls', tempC: untilC, mostMin: MOST_CHILL_MIN };
  if (tempC === null || end === null || reading.roomC === null) return null;
  const covered = leg.top === 'covered' && slice.lid === 'open' && !body.closed;
  const cover = covered ? { cover: { top: coverResistance(body.headspaceMm) } } : {};
  if (leg.kind === 'blast' || leg.kind === 'refrigerate')
    return { ...airStage(leg.kind, tempC, end, leg.standing === 'stacked'), ...cover };
  // Ice water up to the fill: it must not run into the mould. A roll lies under it.
  const overMm = body.closed ? body.mixDepthMm + KETTLE_OVER_MM : body.fillDepthMm - body.liningMm;
  const stirred = leg.kind === 'stirred-ice-bath';
  return { ...waterStage('ice-bath', tempC, Math.max(0, overMm), reading.roomC, end, stirred), ...cover };
}
