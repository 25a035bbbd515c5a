import type { Mark, SourceId } from '../../sources/index.ts';

/** A row of a parasite table. These kill worms and cysts only: far milder than any cooking limit above. */
export interface ParasiteRow {
  readonly tempC: number;
  readonly tempF?: number;
  /** As printed. */
  readonly time: string;
  readonly thickness?: string;
}

export interface ParasiteTable {
  readonly id: string;
  readonly title: string;
  readonly source: SourceId;
  readonly mark: Mark;
  readonly note: string;
  readonly rows: readonly ParasiteRow[];
}

const heat = (tempF: number, tempC: number, time: string): ParasiteRow => ({ tempF, tempC, time });

/** Reference tables on Trichinella and Toxoplasma. Never cooking limits for food sold ready to eat. */
export const PARASITE_TABLES: readonly ParasiteTable[] = [
  {
    id: 'trichinella-heat',
    title: 'Trichinella in pork: heating',
    source: 'us-9-cfr-318-10',
    mark: 'confirmed',
    note: 'All parts, coldest spot. Not a cooking limit: bacteria need far more.',
    rows: [
      heat(120, 49.0, '21 h'),
      heat(122, 50.0, '9.5 h'),
      heat(124, 51.1, '4.5 h'),
      heat(126, 52.2, '2 h'),
      heat(128, 53.4, '1 h'),
      heat(130, 54.5, '30 min'),
      heat(132, 55.6, '15 min'),
      heat(134, 56.7, '6 min'),
      heat(136, 57.8, '3 min'),
      heat(138, 58.9, '2 min'),
      heat(140, 60.0, '1 min'),
      heat(142, 61.1, '1 min'),
      heat(144, 62.2, 'reached'),
    ],
  },
  {
    id: 'trichinella-freezing-pieces',
    title: 'Trichinella in domestic pork: freezing by piece',
    source: 'us-9-cfr-318-10',
    mark: 'confirmed',
    note: 'Not for bear, wild boar, horse or walrus, whose worms stand freezing.',
    rows: [
      { tempF: 5, tempC: -15.0, time: '20 days', thickness: 'up to 15 cm' },
      { tempF: -10, tempC: -23.3, time: '10 days', thickness: 'up to 15 cm' },
      { tempF: -20, tempC: -28.9, time: '6 days', thickness: 'up to 15 cm' },
      { tempF: 5, tempC: -15.0, time: '30 days', thickness: '15 to 69 cm' },
      { tempF: -10, tempC: -23.3, time: '20 days', thickness: '15 to 69 cm' },
      { tempF: -20, tempC: -28.9, time: '12 days', thickness: '15 to 69 cm' },
    ],
  },
  {
    id: 'trichinella-freezing-centre',
    title: 'Trichinella in domestic pork: freezing by centre temperature',
    source: 'us-9-cfr-318-10',
    mark: 'confirmed',
    note: 'Probe at the centre of the thickest piece. Hours read in a review; °F from memory of the rule.',
    rows: [
      heat(0, -17.8, '106 h'),
      heat(-5, -20.6, '82 h'),
      heat(-10, -23.3, '63 h'),
      heat(-15, -26.1, '48 h'),
      heat(-20, -28.9, '35 h'),
      heat(-25, -31.7, '22 h'),
      heat(-30, -34.5, '8 h'),
      heat(-35, -37.2, '0.5 h'),
    ],
  },
  {
    id: 'trichinella-freezing-eu-1',
    title: 'European Union, freezing method 1',
    source: 'eu-2015-1375',
    mark: 'memory',
    note: 'Domestic swine meat only.',
    rows: [
      { tempC: -25, time: '240 h', thickness: 'up to 25 cm' },
      { tempC: -25, time: '480 h', thickness: '25 to 50 cm' },
    ],
  },
  {
    id: 'trichinella-freezing-eu-2',
    title: 'European Union, freezing method 2',
    source: 'eu-2015-1375',
    mark: 'memory',
    note: 'Domestic swine meat only.',
    rows: [
      { tempC: -15, time: '20 days', thickness: 'up to 15 cm' },
      { tempC: -23, time: '10 days', thickness: 'up to 15 cm' },
      { tempC: -29, time: '6 days', thickness: 'up to 15 cm' },
      { tempC: -15, time: '30 days', thickness: '15 to 50 cm' },
      { tempC: -25, time: '20 days', thickness: '15 to 50 cm' },
      { tempC: -29, time: '12 days', thickness: '15 to 50 cm' },
    ],
  },
  {
    id: 'trichinella-freezing-eu-3',
    title: 'European Union, freezing method 3, centre temperature',
    source: 'eu-2015-1375',
    mark: 'memory',
    note: 'Domestic swine meat only.',
    rows: [
      { tempC: -18, time: '106 h' },
      { tempC: -21, time: '82 h' },
      { tempC: -23.5, time: '63 h' },
      { tempC: -26, time: '48 h' },
      { tempC: -29, time: '35 h' },
      { tempC: -32, time: '22 h' },
      { tempC: -35, time: '8 h' },
      { tempC: -37, time: '0.5 h' },
    ],
  },
  {
    id: 'toxoplasma',
    title: 'Toxoplasma cysts in meat',
    source: 'toxoplasma-1990',
    mark: 'confirmed',
    note: 'Observations, not limits.',
    rows: [
      { tempC: 67, time: 'reached: none survived' },
      { tempC: 64, time: '3 min: survived once' },
      { tempC: 61, time: '3.6 min: as a rule none' },
      { tempC: 58, time: '9.5 min: none' },
      { tempC: 52, time: '9.5 min: alive' },
      { tempC: -1, time: '22.4 days: alive' },
      { tempC: -6.7, time: '11.2 days: alive' },
      { tempC: -12.37, time: 'reached: as a rule none' },
    ],
  },
];

/** Source of `trichinellaFreezingMeanH`. */
export const TRICHINELLA_FREEZING_SOURCE: SourceId = 'kotula-1990';

/** Mean line of a freezing trial, h: log10 t = 5.98 + 0.40 T. Its 99 % limits are far longer; never a process. */
export function trichinellaFreezingMeanH(tempC: number): number {
  return 10 ** (5.98 + 0.4 * tempC);
}
