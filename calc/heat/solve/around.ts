/** Heat exchange of one contact with one medium. */
export interface Exchange {
  readonly node: number;
  readonly medium: number;
  /** W/K. */
  readonly conductance: number;
}

/**
 * The wall and lining of a mould as what they pass and hold, without a state of their own: each layer stands at the
 * temperature that the food within and the media without give it, and its heat follows. A wall follows within
 * a minute or so, thick iron over a gap of air within ten: good enough for a slider, and it lets the net take far
 * longer steps, since nothing in it answers as fast as a film of water on thin metal.
 */
export interface SteadyShell {
  readonly rings: readonly Ring[];
  /** J/K that each food node carries of the layers on it. */
  readonly lump: Float64Array;
  /** J/K of the layers that go with the bath, and what each food node gives them for each degree the bath warms. */
  readonly bathLump: number;
  readonly bathCross: Float64Array;
  /** °C of every node of the layers, from those of the food and the media. */
  readonly shellC: (foodC: (node: number) => number, mediaC: Float64Array) => Float64Array;
  /** How the layers settle from temperatures they stood at to those given for a node that takes `tauS`. */
  readonly settling: (beforeC: Float64Array, nowC: (node: number, tauS: number) => number) => Settling;
}

/**
 * Heat that layers give the food while they settle to new surroundings, counted from that moment. Layers that
 * take about as long are gathered: group g gives food node `node[k]` its `heatJ[k]` along 1 − exp(−t / `tauS[g]`), for k
 * from `start[g]` to `start[g + 1]`.
 */
interface Settling {
  readonly tauS: Float64Array;
  readonly start: Int32Array;
  readonly node: Int32Array;
  readonly heatJ: Float64Array;
  /** J that each group gives the bath. */
  readonly bathJ: Float64Array;
  /** How far each node of the layers stood off, °C, and how long it takes, s. */
  readonly offC: Float64Array;
  readonly ownTauS: Float64Array;
}

/** A wall that spreads heat along itself: its nodes in a row, each over a food node. W/K. */
export interface Ring {
  readonly food: Int32Array;
  readonly inward: Float64Array;
  /** To medium m from node i at `i × media + m`. */
  readonly outward: Float64Array;
  readonly media: number;
  /** Conductance to the node before, and the pivots of the elimination. */
  readonly back: Float64Array;
  readonly pivot: Float64Array;
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
