import type { Face } from '../mesh/index.ts';
import type { OvenBath } from './bath.ts';

/**
 * A temperature in the course of a stage, its time counted from the stage's start: one value; points
 * `[min, °C]` joined by straight lines and held after the last; or an approach to a final value.
 */
export type Course =
  | number
  | readonly (readonly [timeMin: number, tempC: number])[]
  | { readonly fromC: number; readonly toC: number; readonly tauMin: number };

/** Air, steam or water against a surface. */
export interface Medium {
  readonly tempC: Course;
  /** W/(m²·K), convection and radiation together. */
  readonly filmWm2K: number;
}

/** Water around the mould up to a level over its base. */
export interface Water {
  readonly levelMm: number;
  readonly filmWm2K: number;
  /** A course when the water is held or was measured; a bath with its own heat balance otherwise. */
  readonly bath:
    | { readonly kind: 'course'; readonly tempC: Course }
    /** `startC` null: as the stage before, in the same bath, left it. */
    | { readonly kind: 'oven'; readonly startC: number | null; readonly pan: OvenBath };
}

export type StageKind =
  | 'bath'
  | 'oven'
  | 'steam'
  | 'poach'
  | 'rest'
  | 'press'
  | 'ice-bath'
  | 'blast'
  | 'refrigerate'
  | 'freeze';

/** When a stage ends. `core` is the slowest spot: the coldest in `reaches`, the hottest in `falls`. */
export type StageEnd =
  | { readonly when: 'time'; readonly minutes: number }
  | { readonly when: 'core-reaches'; readonly tempC: number; readonly mostMin: number }
  | { readonly when: 'core-falls'; readonly tempC: number; readonly mostMin: number };

/** One stage of the process: what surrounds the mould, and until when. */
export interface HeatStage {
  readonly kind: StageKind;
  readonly end: StageEnd;
  /** Whatever is not under water. In an oven bath this is also the oven that heats the pan. */
  readonly air: Medium;
  readonly water?: Water;
  /** Faces that meet something else than air and water, or nothing: pressed on a board, stacked. */
  readonly faces?: Partial<Readonly<Record<Face, Medium | 'closed'>>>;
  /** Film, foil or lid laid over a face for this stage, m²·K/W. */
  readonly cover?: Partial<Readonly<Record<Face, number>>>;
}

/** Value of a course, °C, at a time in minutes from the start of its stage. */
export function courseAt(course: Course, timeMin: number): number {
  if (typeof course === 'number') return course;
  if ('tauMin' in course) {
    const { fromC, toC, tauMin } = course;
    return toC + (fromC - toC) * Math.exp(-timeMin / tauMin);
  }
  const later = course.findIndex(([at]) => at > timeMin);
  const [, lastC] = course.at(-1) ?? [0, Number.NaN];
  if (later === -1) return lastC;
  const [toMin, toC] = course[later] ?? [0, Number.NaN];
  const [fromMin, fromC] = course[later - 1] ?? [toMin, toC];
  return later === 0 ? toC : fromC + ((toC - fromC) * (timeMin - fromMin)) / (toMin - fromMin);
}
