/** An additive as a list names it. */
export interface Additive {
  /** Row of the composition table. */
  readonly rowId: string;
  /** EU and UK: class, then name and number. */
  readonly eu: string;
  /** United States: common name, and what it does. */
  readonly us: string;
}

const of = (rowId: string, eu: string, us: string): Additive => ({ rowId, eu, us });

export const NITRITE = of(
  'sodium-nitrite',
  'preservative: sodium nitrite (E 250)',
  'sodium nitrite (preservative)',
);
export const NITRATE = of(
  'sodium-nitrate',
  'preservative: sodium nitrate (E 251)',
  'sodium nitrate (preservative)',
);

/**
 * Names of additives. Classes and numbers: Regulation (EC) No 1333/2008, Annex II, from memory; names in the United
 * States: 21 CFR 101.22(j) and 184, from memory.
 */
const ADDITIVES: readonly Additive[] = [
  NITRITE,
  NITRATE,
  of('potassium-nitrate', 'preservative: potassium nitrate (E 252)', 'potassium nitrate (preservative)'),
  of('sodium-ascorbate', 'antioxidant: sodium ascorbate (E 301)', 'sodium ascorbate'),
  of('sodium-erythorbate', 'antioxidant: sodium erythorbate (E 316)', 'sodium erythorbate'),
  of('sodium-tripolyphosphate', 'stabiliser: triphosphates (E 451)', 'sodium phosphates'),
  of('trisodium-citrate-dihydrate', 'acidity regulator: sodium citrates (E 331)', 'sodium citrate'),
  of('msg-monohydrate', 'flavour enhancer: monosodium glutamate (E 621)', 'monosodium glutamate'),
  of('sodium-lactate-60', 'acidity regulator: sodium lactate (E 325)', 'sodium lactate'),
  of('potassium-chloride', 'potassium chloride (E 508)', 'potassium chloride'),
];

/** The additive of a row. */
export function additiveOf(rowId: string | null | undefined): Additive | undefined {
  return ADDITIVES.find((additive) => additive.rowId === rowId);
}
