/** How a reading is drawn: by shape, never by colour alone. */
export type PointMark = 'taken' | 'excluded' | 'flagged';

export interface CurvePoint {
  readonly id: string;
  readonly atMs: number;
  readonly tempC: number;
  readonly mark: PointMark;
}

/** One probe's readings. They need not be in order. */
export interface CurveSeries {
  readonly id: string;
  readonly name: string;
  readonly points: readonly CurvePoint[];
  /** A curve nobody measured: drawn without marks, told without readings. */
  readonly predicted?: boolean;
}

/** Between what curves a prediction may lie. */
export interface CurveCorridor {
  readonly label: string;
  readonly points: readonly { readonly atMs: number; readonly lowC: number; readonly highC: number }[];
}

/** A temperature the curve is judged by. `act` is the limit with the probe error added. */
export interface CurveLevel {
  readonly kind: 'limit' | 'act';
  readonly tempC: number;
  readonly label: string;
}

/** A stretch of time worth seeing: the hold that counts, or the one that broke off. */
export interface CurveRun {
  readonly fromMs: number;
  readonly toMs: number;
  readonly label: string;
}

/** One leg of a cooling rule as the clock gives it: at `byMs` the core must be at or below `toC`. */
export interface WindowLeg {
  readonly fromMs: number;
  readonly byMs: number;
  /** Where the leg starts; null when its clock starts at the end of the cook. */
  readonly fromC: number | null;
  readonly toC: number;
  readonly label: string;
}

/** A moment on the time axis: into the bath, out, under the press. */
export interface CurveMoment {
  readonly atMs: number;
  readonly label: string;
}

/** Everything one chart shows. Temperatures °C, times epoch ms. */
export interface CurveModel {
  readonly series: readonly CurveSeries[];
  readonly levels?: readonly CurveLevel[];
  readonly runs?: readonly CurveRun[];
  readonly window?: readonly WindowLeg[];
  readonly moments?: readonly CurveMoment[];
  readonly corridor?: CurveCorridor;
  /** `elapsed`: times count from 0 at the start, and read as hours and minutes since. The wall clock unless told. */
  readonly clock?: 'wall' | 'elapsed';
  /** Minutes the batch's clock is ahead of UTC, for the times along the axis. */
  readonly offsetMin: number;
}

/** Outer size in CSS pixels; one pixel is 0.75 pt on paper. */
export interface ChartSize {
  readonly width: number;
  readonly height: number;
}
