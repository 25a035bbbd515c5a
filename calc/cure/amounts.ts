/**
 * What a batch holds of what the limits are about, g, each as the span it may lie in: `low` is
 * certain, `high` is the worst the missing facts allow, null where nothing bounds it.
 */
export interface Span {
  readonly low: number;
  readonly high: number | null;
}

/** Why a span has no upper end. */
export type UnboundedBecause = 'strength' | 'curing-salt-amount' | 'carried-amount';

/** The facts every limit is judged on. Masses in g; null is unknown. */
export interface CureAmounts {
  /** No line of the formula holds anything yet. */
  readonly isEmpty: boolean;
  /** Raw lean, fat, liver and offal. */
  readonly meatBlockG: number | null;
  /** Everything in the bowl, without a lining. */
  readonly totalG: number | null;
  /** Lining of the mould; 0 when there is none. */
  readonly liningG: number | null;
  /** The whole finished product after chilling. */
  readonly finishedG: number | null;
  /** Nitrite in the bowl from every source, as sodium nitrite. */
  readonly nitriteG: Span;
  /** Nitrite in the lining, as sodium nitrite. */
  readonly liningNitriteG: Span;
  /** Nitrate put in with curing salts, as sodium nitrate. */
  readonly nitrateG: Span;
  /** A curing salt in the batch declares nitrate, however much of it there is. */
  readonly declaresNitrate: boolean;
  /** Sodium ascorbate or erythorbate. */
  readonly acceleratorG: Span;
  readonly unboundedBecause: UnboundedBecause | null;
}
