import type { CurveSize } from '../batch-sheet/curve-size.ts';

/** The curve of the log sheet, mm. */
export const LOG_CURVE_MM: CurveSize = { width: 188, height: 38, left: 11, right: 2, top: 4, bottom: 4.5 };

/** Squares to draw a curve on by hand. */
export const GRID_MM: CurveSize = { ...LOG_CURVE_MM, height: 50 };

/** Readings of one log, in rows of twelve: with little else to say, and with much. */
export const READINGS_PRINTED = { roomy: 24, full: 12 } as const;

/** Lines of stops, deviations and remarks beyond which the page is full. */
export const ROOMY_LINES = 2;

/** Rows of boxes for each log of the empty form. */
export const BLANK_ROWS = 2;
