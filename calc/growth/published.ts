import type { Mark, SourceId } from '../sources/index.ts';
import type { CardinalTemperatures } from './cardinal-temperature.ts';
import { workOfGenerations } from './lag.ts';

/** Growth of one organism in one food, as published. */
export interface GrowthSet extends CardinalTemperatures {
  readonly id: 'roasted-chicken' | 'braised-beef';
  readonly mark: Mark;
}

/** Clostridium perfringens from spores in uncured, lightly salted meat on its way from the cook to the cold. */
export const PERFRINGENS_SOURCE: SourceId = 'cperfringens-cooling-model';

/** Two foods, each on its own: they are never averaged. Source: `cperfringens-cooling-model`. */
export const PERFRINGENS_SETS: readonly GrowthSet[] = [
  { id: 'roasted-chicken', optimumPerH: 6.06, minC: 8.8, optC: 46.4, maxC: 51.5, mark: 'memory' },
  { id: 'braised-beef', optimumPerH: 5.64, minC: 10.3, optC: 43.5, maxC: 53.4, mark: 'memory' },
];

/**
 * Lag of its spores: germination and outgrowth take so many generation times, whatever the temperature. The constant
 * ratio is published (Juneja et al. 2001), its value is from memory. Never taken larger; growth without it is the edge
 * to look at. Source: `cperfringens-lag`.
 */
export const PERFRINGENS_LAG_WORK = workOfGenerations(8.068);

/** Counts to begin and to end with, log10 per gram. They matter only when growth is past all limits. Derived from trials. */
export const PERFRINGENS_COUNTS = { start: 2, most: 9 } as const;

/** More salt than this is not "lightly salted". The paper gives no figure: common practice, no source. */
export const LIGHTLY_SALTED_FRACTION = 0.02;

/** Tenfolds of Listeria monocytogenes a day at 5 °C by kind of food. From memory. */
export interface ListeriaGroup {
  readonly id: 'pate' | 'deli-meat' | 'frankfurter' | 'smoked-seafood';
  readonly at5CLogsPerDay: number;
}

/** Source: `fda-fsis-listeria-2003`; its conversion to other temperatures was met by 23 printed figures. */
export const LISTERIA_GROUPS: readonly ListeriaGroup[] = [
  { id: 'pate', at5CLogsPerDay: 0.252 },
  { id: 'deli-meat', at5CLogsPerDay: 0.282 },
  { id: 'frankfurter', at5CLogsPerDay: 0.131 },
  { id: 'smoked-seafood', at5CLogsPerDay: 0.15 },
];
export const LISTERIA_SOURCE: SourceId = 'fda-fsis-listeria-2003';
