import type { Mark, SourceId } from '../sources/index.ts';

/** One strength of salt brine in every scale, at 60 °F (15.56 °C). */
export interface BrineRow {
  /** Degrees salometer of the scale on which saturated brine, 26.395 %, is 100. */
  readonly salometer: number;
  /** Salt, % of the brine by mass. */
  readonly saltPercent: number;
  readonly specificGravity: number;
  /** As the trade table is remembered; null where it is not. */
  readonly tradeSpecificGravity: number | null;
  readonly baume: number;
  readonly saltGPerLitreBrine: number;
  readonly saltGPerKgWater: number;
  readonly saltLbPerGallonBrine: number;
  readonly saltLbPerGallonWater: number;
  /** At 25 °C, by the Pitzer form. */
  readonly waterActivity: number;
  /** How the specific gravity is known; the columns that rest on it are known no better. */
  readonly mark: Mark;
}

/** Rows from here on carry the trade's specific gravity from memory, those before a published correlation's. */
const FROM_MEMORY = 90;

const ROWS: readonly (readonly (number | null)[])[] = [
  [0, 0.0, 1.0, 1.0, 0.0, 0.0, 0.0, 0.0, 0.0, 1.0],
  [5, 1.32, 1.0095, null, 1.4, 13.3, 13.4, 0.111, 0.112, 0.9924],
  [10, 2.639, 1.019, 1.019, 2.7, 26.9, 27.1, 0.224, 0.226, 0.9847],
  [15, 3.959, 1.0286, null, 4.0, 40.7, 41.2, 0.34, 0.344, 0.9767],
  [20, 5.279, 1.0382, 1.038, 5.3, 54.8, 55.7, 0.457, 0.465, 0.9684],
  [25, 6.599, 1.0479, null, 6.6, 69.1, 70.6, 0.577, 0.589, 0.9597],
  [30, 7.919, 1.0577, 1.058, 7.9, 83.7, 86.0, 0.698, 0.717, 0.9505],
  [35, 9.238, 1.0675, null, 9.2, 98.5, 101.8, 0.822, 0.849, 0.9409],
  [40, 10.558, 1.0774, 1.078, 10.4, 113.6, 118.0, 0.948, 0.984, 0.9308],
  [45, 11.878, 1.0874, null, 11.7, 129.0, 134.8, 1.077, 1.124, 0.9201],
  [50, 13.198, 1.0975, 1.098, 12.9, 144.7, 152.0, 1.208, 1.268, 0.9088],
  [55, 14.517, 1.1077, null, 14.1, 160.6, 169.8, 1.341, 1.416, 0.8969],
  [60, 15.837, 1.118, 1.118, 15.3, 176.9, 188.2, 1.476, 1.569, 0.8842],
  [65, 17.157, 1.1283, null, 16.5, 193.4, 207.1, 1.614, 1.727, 0.8709],
  [70, 18.477, 1.1388, 1.139, 17.7, 210.2, 226.6, 1.754, 1.89, 0.8567],
  [75, 19.796, 1.1493, null, 18.8, 227.3, 246.8, 1.897, 2.058, 0.8417],
  [80, 21.116, 1.16, 1.16, 20.0, 244.7, 267.7, 2.042, 2.232, 0.8259],
  [85, 22.436, 1.1707, null, 21.1, 262.4, 289.3, 2.19, 2.412, 0.8091],
  [90, 23.756, 1.182, 1.182, 22.3, 280.5, 311.6, 2.341, 2.598, 0.7913],
  [95, 25.075, 1.193, null, 23.5, 298.8, 334.7, 2.494, 2.79, 0.7726],
  [100, 26.395, 1.204, 1.204, 24.6, 317.5, 358.6, 2.65, 2.99, 0.7527],
];

/**
 * The brine table whole. Per cent follow from the definition of the scale (read); specific gravity is
 * derived from a density correlation up to 85 degrees and from memory above.
 */
export const BRINE_TABLE: readonly BrineRow[] = ROWS.map((row) => {
  const at = (index: number) => row[index] ?? 0;
  return {
    salometer: at(0),
    saltPercent: at(1),
    specificGravity: at(2),
    tradeSpecificGravity: row[3] ?? null,
    baume: at(4),
    saltGPerLitreBrine: at(5),
    saltGPerKgWater: at(6),
    saltLbPerGallonBrine: at(7),
    saltLbPerGallonWater: at(8),
    waterActivity: at(9),
    mark: at(0) >= FROM_MEMORY ? 'memory' : 'derived',
  };
});

export const BRINE_TABLE_SOURCES = [
  'salometer-manual',
  'us-baume-scale',
  'brine-table-trade',
] as const satisfies readonly SourceId[];

/** Freezing points of salt brine: per cent by mass and °C. CRC Handbook; the last is the eutectic. */
export const BRINE_FREEZING: readonly { readonly saltPercent: number; readonly freezesC: number }[] = [
  { saltPercent: 0, freezesC: 0 },
  { saltPercent: 5, freezesC: -3.05 },
  { saltPercent: 10, freezesC: -6.56 },
  { saltPercent: 15, freezesC: -10.89 },
  { saltPercent: 20, freezesC: -16.46 },
  { saltPercent: 23.3, freezesC: -21.1 },
];
export const BRINE_FREEZING_SOURCE = 'crc-freezing-points' satisfies SourceId;
