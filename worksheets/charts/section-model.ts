import { type SectionNet, sectionAt } from '@larderwright/calc/cook-plan';
import * as say from '#words/charts/section-model.ts';

/** One moment of the cut, ready to draw. Lengths mm, temperatures °C. */
export interface SectionModel {
  readonly net: SectionNet;
  readonly tempC: Float32Array;
  /** What it shows, in words: "at 1:25, in the bath". */
  readonly when: string;
  /** Height of the coldest spot of the middle line over the base, mm. */
  readonly coldestMm?: number | null;
}

/** Foot of each band, °C. */
export const BAND_STEPS_C: readonly number[] = [0, 10, 20, 30, 40, 50, 60, 70, 80, 90];

/** Extent of the whole cut, mirrored: half its width, and its height. */
export function extentOf({ xMm, yMm }: SectionNet): { halfMm: number; heightMm: number } {
  return {
    halfMm: xMm.reduce((most, x) => Math.max(most, x), 0),
    heightMm: yMm.reduce((most, y) => Math.max(most, y), 0),
  };
}

export interface SectionRow {
  readonly heightMm: number;
  /** In the middle, half way out, and at the wall. Null outside the body. */
  readonly cells: readonly (number | null)[];
}

/** Shares of the way out at which the table reads. */
export const COLUMNS = [
  ['middle', 0],
  [say.halfWayOut, 0.5],
  [say.atTheWall, 1],
] as const;
const ROWS = 5;

/** The cut read at five heights from the top down, in the middle, half way out and at the wall. */
export function sectionRows({ net, tempC }: SectionModel): SectionRow[] {
  const { heightMm } = extentOf(net);
  return Array.from({ length: ROWS }, (_, i) => {
    const y = (heightMm * (ROWS - 1 - i)) / (ROWS - 1);
    const reach = reachAt(net, y);
    return {
      heightMm: y,
      cells: COLUMNS.map(([, share]) => (reach === null ? null : sectionAt(net, tempC, share * reach, y))),
    };
  });
}

/** How far out the body reaches at a height, mm, by halving. */
function reachAt(net: SectionNet, y: number): number | null {
  const flat = new Float32Array(net.xMm.length);
  if (sectionAt(net, flat, 0, y) === null) return null;
  let inside = 0;
  let outside = extentOf(net).halfMm;
  if (sectionAt(net, flat, outside, y) !== null) return outside;
  for (let i = 0; i < 20; i++) {
    const middle = (inside + outside) / 2;
    if (sectionAt(net, flat, middle, y) === null) outside = middle;
    else inside = middle;
  }
  return inside;
}
