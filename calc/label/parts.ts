import {
  COMPONENTS,
  type FormulaLine,
  type FormulaSlice,
  isInBowl,
  type KnownFraction,
  type LineComposition,
  lineComposition,
  type MixLine,
} from '../formula/index.ts';
import type { Allergen, CompositionTable, Ingredient, IngredientDetails } from '../ingredients/index.ts';
import { compensatedSum, type Entry, entryValue, readEntry } from '../quantities/index.ts';
import { ticked } from './allergen-classes.ts';
import { meatClassOf } from './meat-class.ts';
import type { MeatClass } from './meat-content.ts';
import { proposedName } from './names.ts';
import type { PerHundred } from './nutrients.ts';
import { perHundredOfExtra, perHundredOfLine, standInDetails } from './per-hundred.ts';
import { collagenByCut, publishedCollagenOf } from './published-collagen.ts';
import type { CarriedId, LabelExtra, LabelLine, LabelSlice } from './slice.ts';
import { STAND_INS } from './stand-ins.ts';

/** Details of rows of the table, by id. */
export interface DetailsTable {
  get(id: string): IngredientDetails | undefined;
}

/** One thing that goes into the product, read. */
export interface LabelPart {
  readonly id: string;
  /** Path of what the label says of it, for findings. */
  readonly path: string;
  /** As the kitchen calls it. */
  readonly ownName: string;
  /** As the list calls it: typed, or proposed. */
  readonly name: string;
  readonly proposed: string;
  readonly line: FormulaLine | null;
  /** Which other worksheet of the batch it comes from; null: the formula, or typed on the label. */
  readonly carried: CarriedId | null;
  readonly row: Ingredient | undefined;
  /** What is in the food, g: of the bowl, the part that went into the moulds. */
  readonly massG: number | null;
  readonly per100: PerHundred;
  /** Most that is neither water, protein, fat nor salt in it. */
  readonly openFraction: number;
  /** Nutrition leans on the kitchen's own, rounded figures. */
  readonly kitchenRow: boolean;
  readonly meatClass: MeatClass | null;
  readonly fatFraction: number | null;
  readonly proteinFraction: number | null;
  readonly collagenFraction: number | null;
  readonly madeOf: string;
  readonly needsMadeOf: boolean;
  readonly stressed: boolean;
  readonly euAllergens: readonly Allergen[];
  readonly usAllergens: readonly Allergen[];
  /** Somebody or the table has told; "to check" is not told. */
  readonly allergensTold: boolean;
}

/** Shelves whose foods are made of several ingredients. */
const COMPOUND_SHELVES: readonly string[] = ['cured-meat', 'condiment', 'stock', 'reference-product'];
const COMPOUND_ROWS =
  /bread|crumb|rusk|cracker|pastry|spice-blend|quatre-epices|margarine|kitchen-butter-salted|cheese/;

function isCompound(row: Ingredient | undefined): boolean {
  return row !== undefined && (COMPOUND_SHELVES.includes(row.category) || COMPOUND_ROWS.test(row.id));
}

function allergensOf(
  row: Ingredient | undefined,
  said: string[] | null,
  free: boolean,
): Pick<LabelPart, 'euAllergens' | 'usAllergens' | 'allergensTold'> {
  if (said !== null) {
    const { eu, us } = ticked(said);
    // What the table has for certain is never unticked away.
    const sure = (list: readonly Allergen[]) => list.filter(({ toCheck }) => !toCheck);
    return {
      euAllergens: [...sure(row?.euAllergens ?? []), ...eu],
      usAllergens: [...sure(row?.usAllergens ?? []), ...us],
      allergensTold: true,
    };
  }
  if (free) return { euAllergens: [], usAllergens: [], allergensTold: true };
  const eu = row?.euAllergens ?? [];
  return {
    euAllergens: eu,
    usAllergens: row?.usAllergens ?? [],
    allergensTold: row !== undefined && !eu.some(({ toCheck }) => toCheck),
  };
}

/** Details of a row; a row of the kitchen's own leans on its nearest published one. */
export function detailsOf(
  row: Ingredient | undefined,
  table: CompositionTable,
  details: DetailsTable,
): { details: IngredientDetails | undefined; kitchenRow: boolean } {
  if (!row) return { details: undefined, kitchenRow: false };
  const own = details.get(row.id);
  if (own) return { details: own, kitchenRow: false };
  const nearestId = STAND_INS[row.id];
  const nearest = nearestId === undefined ? undefined : table.get(nearestId);
  const of = nearestId === undefined ? undefined : details.get(nearestId);
  return {
    details: nearest && of ? standInDetails(row, nearest, of) : undefined,
    kitchenRow: row.source === 'kitchen-compositions',
  };
}

function collagenOf(said: LabelLine | undefined, fatFraction: number | null): number | null {
  if (!said) return null;
  const typed = readEntry('fraction', said.collagen);
  if (typed.state !== 'blank') return typed.state === 'ok' ? typed.value : null;
  const cut = publishedCollagenOf(said.collagenCut);
  return cut ? collagenByCut(cut, fatFraction) : null;
}

function openFraction(composition: LineComposition): number {
  const known = COMPONENTS.map((component) => composition[component].fraction ?? 0);
  return Math.max(0, 1 - compensatedSum(known));
}

/** What a label is made from. */
export interface PartsContext {
  readonly formula: Pick<FormulaSlice, 'lines'>;
  readonly lines: readonly MixLine[];
  readonly table: CompositionTable;
  readonly details: DetailsTable;
  /** Share of the bowl that went into the moulds. */
  readonly filledShare: number | null;
}

/** Lines of the formula as the label sees them. */
export function lineParts(slice: LabelSlice, context: PartsContext): LabelPart[] {
  const { table } = context;
  return context.lines.flatMap((mixLine): LabelPart[] => {
    const line = context.formula.lines.find(({ id }) => id === mixLine.lineId);
    if (!line) return [];
    const row = line.ingredientId === null ? undefined : table.get(line.ingredientId);
    const said = slice.lines.find(({ id }) => id === line.id);
    const composition = lineComposition(line, table);
    const { details, kitchenRow } = detailsOf(row, table, context.details);
    const share = isInBowl(line.part) ? context.filledShare : 1;
    const meatClass = meatClassOf(row, details);
    const proposed = line.part === 'salt' && !row ? 'salt' : proposedName(row, line.name, meatClass !== null);
    const name = said?.name.trim() ?? '';
    const isSalt = line.part === 'salt' || line.part === 'curing-salt';
    return [
      {
        id: line.id,
        path: `label.lines.${line.id}`,
        ownName: line.name.trim() === '' ? (row?.name ?? '') : line.name,
        name: name === '' ? proposed : name,
        proposed,
        line,
        carried: null,
        row,
        massG: mixLine.massG === null || share === null ? null : mixLine.massG * share,
        per100: perHundredOfLine(line, row, details, composition, said?.figures),
        openFraction: openFraction(composition),
        kitchenRow,
        meatClass,
        fatFraction: composition.fat.fraction,
        proteinFraction: composition.protein.fraction,
        collagenFraction: collagenOf(said, composition.fat.fraction),
        madeOf: said?.madeOf.trim() ?? '',
        needsMadeOf: isCompound(row),
        stressed: said?.stressed ?? false,
        ...allergensOf(row, said?.allergens ?? null, isSalt),
      },
    ];
  });
}

function declared(entry: Entry): KnownFraction {
  const fraction = entryValue('fraction', entry);
  return { fraction, from: fraction === null ? 'unknown' : 'declared' };
}

function isUntouched(extra: LabelExtra): boolean {
  return extra.name.trim() === '' && extra.mass.text.trim() === '' && extra.madeOf.trim() === '';
}

/** Crust, jelly and seals as the label sees them. */
export function extraParts(extras: readonly LabelExtra[]): LabelPart[] {
  return extras
    .filter((extra) => !isUntouched(extra))
    .map((extra) => {
      const { fat, protein, salt } = extra.figures;
      return {
        id: extra.id,
        path: `label.extras.${extra.id}`,
        ownName: extra.name,
        name: extra.name.trim(),
        proposed: '',
        line: null,
        carried: null,
        row: undefined,
        massG: entryValue('mass', extra.mass),
        per100: perHundredOfExtra(
          { fat: declared(fat), protein: declared(protein), salt: declared(salt) },
          extra.figures,
        ),
        openFraction: 1,
        kitchenRow: false,
        meatClass: null,
        fatFraction: null,
        proteinFraction: null,
        collagenFraction: null,
        madeOf: extra.madeOf.trim(),
        needsMadeOf: true,
        stressed: false,
        ...allergensOf(undefined, extra.allergens, false),
      };
    });
}
