import type { Settling, SteadyShell } from './steady-shell.ts';

/** Heat exchange of one contact with one medium. */
export interface Exchange {
  readonly node: number;
  readonly medium: number;
  /** W/K. */
  readonly conductance: number;
}

/** What surrounds the body: temperatures of the media, one of which may be a bath with a heat balance. */
export interface Surroundings {
  readonly exchanges: readonly Exchange[];
  /** Wall and lining that have no nodes of their own. */
  readonly steady?: SteadyShell;
  /** How those settle, from the time given, s. */
  readonly settling?: Settling & { readonly fromS: number };
  /** Writes the temperature of every medium, °C, at a time in s. `bathC` is the state of the bath. */
  readonly media: (timeS: number, bathC: number, into: Float64Array) => void;
  /** K/s of the bath at a time, its temperature and the heat it gives the whole body, W. Null: no such bath. */
  readonly bathRate: ((timeS: number, bathC: number, loadW: number) => number) | null;
  /** Which medium the bath is. */
  readonly bathMedium: number;
  /** What a bath with a heat balance holds, J/K, and which media stand at its temperature. */
  readonly bathHeatJK: number;
  readonly atBath: readonly number[];
}
