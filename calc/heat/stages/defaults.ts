import type { OvenBath } from './bath.ts';
import type { HeatStage, Medium, StageEnd, Water } from './stage.ts';
import { pressureAtKPa } from './vapour.ts';

/** A film coefficient, W/(m²·K): what is used unless a person knows better, and how far it may be off. */
export interface FilmRange {
  readonly low: number;
  readonly usual: number;
  readonly high: number;
}

/**
 * Films of the kitchen, convection and radiation together. Ranges from `film-coefficient-ranges` (memory);
 * the usual value is our choice within them, toward the slow side for cold.
 */
export const FILMS = {
  stillOven: { low: 10, usual: 15, high: 20 },
  fanOven: { low: 20, usual: 28, high: 40 },
  /** Steam and air at rest in a covered pan, condensing; falls steeply with its air content. */
  coveredSpace: { low: 25, usual: 50, high: 200 },
  steamOven: { low: 100, usual: 200, high: 500 },
  stillBath: { low: 400, usual: 600, high: 1200 },
  poachingWater: { low: 400, usual: 800, high: 1500 },
  room: { low: 7, usual: 10, high: 12 },
  refrigerator: { low: 7, usual: 8, high: 12 },
  blast: { low: 20, usual: 35, high: 50 },
  /** Still ice water: the coefficient collapses once the mould's surface is below 10 °C. */
  stillIceWater: { low: 150, usual: 200, high: 600 },
  stirredIceWater: { low: 500, usual: 700, high: 1500 },
} as const satisfies Record<string, FilmRange>;

/** Water vapour in a domestic oven with an open bath, kPa. derived: between the dry balance and `mcgee-2004-water-baths`. */
export const OVEN_VAPOUR_KPA: FilmRange = { low: 5, usual: 20, high: 30 };

export interface PanMeasures {
  readonly waterG: number;
  readonly covered: boolean;
  /** Plan of the mould standing in it, mm². */
  readonly mouldPlanMm2: number;
  readonly panLengthMm?: number;
  readonly panWidthMm?: number;
  readonly panHeightMm?: number;
  readonly altitudeM?: number;
  readonly fan?: boolean;
}

/** A pan in an oven, 350 × 250 × 60 mm unless told. */
export function ovenPan(measures: PanMeasures): OvenBath {
  const { waterG, covered, mouldPlanMm2, altitudeM = 0, fan = false } = measures;
  const { panLengthMm = 350, panWidthMm = 250, panHeightMm = 60 } = measures;
  const plan = panLengthMm * panWidthMm;
  return {
    waterG,
    covered,
    heatedPanM2: (plan + 2 * (panLengthMm + panWidthMm) * panHeightMm) / 1e6,
    freeWaterM2: Math.max(0, plan - mouldPlanMm2) / 1e6,
    panFilmWm2K: fan ? FILMS.fanOven.usual : FILMS.stillOven.usual,
    surfaceFilmWm2K: fan ? 15 : 8,
    vapourKPa: OVEN_VAPOUR_KPA.usual,
    pressureKPa: pressureAtKPa(altitudeM),
  };
}

/** How high water stands round a mould, mm. */
export function waterLevelMm(pan: Pick<OvenBath, 'waterG' | 'freeWaterM2'>): number {
  return pan.waterG / (pan.freeWaterM2 * 1e6) / 1e-3;
}

/** A mould in a pan of water in an oven. Under a cover the space over the water is steam, not oven air. */
export function bathStage(
  ovenC: number,
  startC: number,
  levelMm: number,
  pan: OvenBath,
  end: StageEnd,
): HeatStage {
  const film = pan.covered ? FILMS.coveredSpace.usual : pan.panFilmWm2K;
  const water: Water = { levelMm, filmWm2K: FILMS.stillBath.usual, bath: { kind: 'oven', startC, pan } };
  return { kind: 'bath', end, air: { tempC: ovenC, filmWm2K: film }, water };
}

type Dry = 'oven' | 'fan-oven' | 'steam' | 'rest' | 'refrigerate' | 'blast';

const DRY: Readonly<Record<Dry, { kind: HeatStage['kind']; film: FilmRange }>> = {
  oven: { kind: 'oven', film: FILMS.stillOven },
  'fan-oven': { kind: 'oven', film: FILMS.fanOven },
  steam: { kind: 'steam', film: FILMS.steamOven },
  rest: { kind: 'rest', film: FILMS.room },
  refrigerate: { kind: 'refrigerate', film: FILMS.refrigerator },
  blast: { kind: 'blast', film: FILMS.blast },
};

/** A stage in air or steam all round. Stacked moulds touch: top and base are then closed. */
export function airStage(place: Dry, tempC: Medium['tempC'], end: StageEnd, stacked = false): HeatStage {
  const { kind, film } = DRY[place];
  const air = { tempC, filmWm2K: film.usual };
  return { kind, end, air, ...(stacked ? { faces: { top: 'closed', bottom: 'closed' } } : {}) };
}

/** Under water held at a temperature: a poaching kettle, or ice water, up to a level. */
export function waterStage(
  kind: 'poach' | 'ice-bath',
  tempC: Medium['tempC'],
  levelMm: number,
  airC: number,
  end: StageEnd,
  stirred = false,
): HeatStage {
  const film = kind === 'poach' ? FILMS.poachingWater : stirred ? FILMS.stirredIceWater : FILMS.stillIceWater;
  return {
    kind,
    end,
    air: { tempC: airC, filmWm2K: FILMS.room.usual },
    water: { levelMm, filmWm2K: film.usual, bath: { kind: 'course', tempC } },
  };
}
