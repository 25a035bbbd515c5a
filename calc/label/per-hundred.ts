import {
  type CompositionFields,
  curingSaltNaClFraction,
  type KnownFraction,
  type LineComposition,
} from '../formula/index.ts';
import { type Ingredient, type IngredientDetails, SALT_PER_SODIUM } from '../ingredients/index.ts';
import { entryValue } from '../quantities/index.ts';
import { NONE_OF_ALL, NOTHING_KNOWN, type PerHundred } from './nutrients.ts';
import type { TypedFigures } from './slice.ts';

const PER_100_G = 100;
const MG_PER_100_G = 100_000;
/** Sodium by mass: conventional atomic weights (22.990, with chlorine 35.45, nitrogen 14.007, oxygen 15.999). */
const SODIUM_OF = { chloride: 0.39337, nitrite: 0.33321, nitrate: 0.27049 } as const;
const PURE_SALT = 0.9;
const NX_625 = 6.25;

const per100 = (fraction: number | null) => (fraction === null ? null : fraction * PER_100_G);

function sum(a: number | null, b: number | null): number | null {
  return a === null || b === null ? null : a + b;
}

/** What a row of the composition table and its details say per 100 g. */
export function perHundredOfRow(row: Ingredient, details: IngredientDetails | undefined): PerHundred {
  const proteinG = per100(row.proteinFraction);
  const factor = details?.nitrogenFactor ?? null;
  const fromFactor = proteinG === null || !factor ? proteinG : (proteinG * NX_625) / factor;
  const sodium =
    row.sodiumFraction ?? (row.saltFraction === null ? null : row.saltFraction / SALT_PER_SODIUM);
  const total = details?.carbohydrateTotalG ?? null;
  const fibre = details?.fibreG ?? null;
  return {
    fatG: per100(row.fatFraction),
    saturatesG: details?.saturatedG ?? null,
    carbohydrateG: total,
    availableCarbohydrateG:
      details?.carbohydrateAvailableG ??
      (total === null || fibre === null ? null : Math.max(0, total - fibre)),
    fibreG: fibre,
    sugarsG: details?.sugarsG ?? null,
    addedSugarsG: details?.addedSugarsG ?? null,
    proteinG,
    proteinNx625G: details?.proteinNx625G ?? fromFactor,
    alcoholG: details?.alcoholG ?? null,
    sodiumMg: sodium === null ? null : sodium * MG_PER_100_G,
    cholesterolMg: details?.cholesterolMg ?? null,
    calciumMg: details?.calciumMg ?? null,
    ironMg: details?.ironMg ?? null,
    potassiumMg: details?.potassiumMg ?? null,
    vitaminDUg: details?.vitaminDUg ?? null,
  };
}

/** Sodium of a curing salt from the strengths its pack declares, mg per 100 g; null until both are typed. */
function curingSaltSodiumMg(line: CompositionFields): number | null {
  const salt = curingSaltNaClFraction(line);
  if (salt === null || !line.cure) return null;
  const nitrite = entryValue('fraction', line.cure.nitrite) ?? 0;
  const nitrate = entryValue('fraction', line.cure.nitrate) ?? 0;
  const sodium = salt * SODIUM_OF.chloride + nitrite * SODIUM_OF.nitrite + nitrate * SODIUM_OF.nitrate;
  return sodium * MG_PER_100_G;
}

/** A figure off the pack over one of the table. An unreadable text is unknown, not the table's. */
function typed(
  figures: TypedFigures | undefined,
  key: keyof TypedFigures,
  table: number | null,
): number | null {
  if (!figures || figures[key].text.trim() === '') return table;
  return per100(entryValue('fraction', figures[key]));
}

/** Per 100 g by the table, then by what was typed from the pack of the line itself. */
function withTyped(
  base: PerHundred,
  composition: Pick<LineComposition, 'fat' | 'protein' | 'salt'>,
  figures: TypedFigures | undefined,
): PerHundred {
  const pack = (known: KnownFraction, table: number | null) =>
    known.from === 'table' ? (table ?? per100(known.fraction)) : per100(known.fraction);
  const fatG = pack(composition.fat, base.fatG);
  const tableFatG = base.fatG;
  const scaled =
    composition.fat.from === 'declared' && base.saturatesG !== null && fatG !== null && tableFatG
      ? (base.saturatesG * fatG) / tableFatG
      : base.saturatesG;
  const fibreG = typed(figures, 'fibre', base.fibreG);
  const availableCarbohydrateG = typed(figures, 'carbohydrate', base.availableCarbohydrateG);
  const typedCarbohydrate = figures !== undefined && figures.carbohydrate.text.trim() !== '';
  const typedFibre = figures !== undefined && figures.fibre.text.trim() !== '';
  const salt = composition.salt;
  const saltSodium = salt.fraction === null ? null : (salt.fraction / SALT_PER_SODIUM) * MG_PER_100_G;
  const proteinG = pack(composition.protein, base.proteinG);
  return {
    ...base,
    fatG,
    saturatesG: typed(figures, 'saturates', scaled),
    fibreG,
    availableCarbohydrateG,
    carbohydrateG: typedCarbohydrate || typedFibre ? sum(availableCarbohydrateG, fibreG) : base.carbohydrateG,
    sugarsG: typed(figures, 'sugars', base.sugarsG),
    alcoholG: typed(figures, 'alcohol', base.alcoholG),
    proteinG,
    proteinNx625G: composition.protein.from === 'table' ? base.proteinNx625G : proteinG,
    sodiumMg: salt.from === 'table' ? base.sodiumMg : saltSodium,
  };
}

/** What one line of the formula holds per 100 g. */
export function perHundredOfLine(
  line: CompositionFields,
  row: Ingredient | undefined,
  details: IngredientDetails | undefined,
  composition: LineComposition,
  figures: TypedFigures | undefined,
): PerHundred {
  if (line.part === 'curing-salt') return { ...NONE_OF_ALL, sodiumMg: curingSaltSodiumMg(line) };
  if (line.part === 'salt' && (row?.saltFraction ?? 1) >= PURE_SALT)
    return { ...NONE_OF_ALL, sodiumMg: (row?.sodiumFraction ?? SODIUM_OF.chloride) * MG_PER_100_G };
  return withTyped(row ? perHundredOfRow(row, details) : NOTHING_KNOWN, composition, figures);
}

/** What an extra holds per 100 g: what was typed, over what is known of it. */
export function perHundredOfExtra(
  composition: Pick<LineComposition, 'fat' | 'protein' | 'salt'>,
  figures: TypedFigures,
  known: PerHundred = NOTHING_KNOWN,
): PerHundred {
  return withTyped(known, composition, figures);
}

/** What is neither water nor protein nor fat, share of the food. */
function restFraction({ waterFraction, proteinFraction, fatFraction }: Ingredient): number | null {
  if (waterFraction === null || proteinFraction === null || fatFraction === null) return null;
  return Math.max(0, 1 - waterFraction - proteinFraction - fatFraction);
}

function ratioOf(top: number | null, bottom: number | null): number | null {
  return top === null || !bottom ? null : top / bottom;
}

/**
 * Details of a row of the kitchen's own, which has none: those of its nearest row of the published table, with
 * saturates brought to the row's own fat, and carbohydrates to what its water, protein and fat leave.
 */
export function standInDetails(
  row: Ingredient,
  nearest: Ingredient,
  details: IngredientDetails,
): IngredientDetails {
  const fat = ratioOf(row.fatFraction, nearest.fatFraction);
  const rest = ratioOf(restFraction(row), restFraction(nearest));
  const scaled = (grams: number | null, by: number | null) =>
    grams === 0 ? 0 : grams === null || by === null ? null : grams * by;
  return {
    ...details,
    saturatedG: row.fatFraction === 0 ? 0 : scaled(details.saturatedG, fat),
    carbohydrateTotalG: scaled(details.carbohydrateTotalG, rest),
    carbohydrateAvailableG: scaled(details.carbohydrateAvailableG, rest),
    fibreG: scaled(details.fibreG, rest),
    sugarsG: scaled(details.sugarsG, rest),
    addedSugarsG: scaled(details.addedSugarsG, rest),
    proteinNx625G: null,
    euMeatClass: '',
    euCountsAsMeat: '',
  };
}
