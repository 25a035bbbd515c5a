import type { Mark } from '@larderwright/calc/sources';

/** Units a figure in prose may carry. `dC` is a temperature difference, never a reading. */
export type FigureUnit =
  | 'C'
  | 'dC'
  | 'mm'
  | 'g'
  | 'kg'
  | 'g/kg'
  | 'mL'
  | 'kPa'
  | '%'
  | 'mg/kg'
  | 'min'
  | 'h'
  | 'd'
  | 's'
  | 'm'
  | 'months'
  | 'times'
  | 'stem diameters'
  | '';

/** Which side of the value is safe or meant. It also gives the direction other units are rounded in. */
export type Bound = 'at-least' | 'at-most' | 'below' | 'above';

/**
 * A number the prose leans on, with where it comes from. Prose never types such a number: it names
 * the figure, so that a correction is made in one place.
 */
export interface Figure {
  /** A single value, or a range from low to high. */
  readonly value: number | readonly [number, number];
  readonly unit: FigureUnit;
  readonly bound?: Bound;
  readonly mark: Mark;
  /** Id of the source. Absent for common practice. */
  readonly source?: string;
}
