import type { FormulaSlice, FormulaValues } from '../formula/index.ts';
import type { Allergen, CompositionTable } from '../ingredients/index.ts';
import type { AudienceWarning } from './audience.ts';
import type { CarriedFood } from './carried.ts';
import type { ListedIngredient } from './ingredient-list.ts';
import type { MeatGroup } from './meat-groups.ts';
import type { Nutrition } from './nutrition.ts';
import type { EuRowId, PanelRow, UsRow } from './panels.ts';
import type { DetailsTable, LabelPart } from './parts.ts';
import type { Quid } from './quid.ts';
import type { Servings } from './servings.ts';

/** What a label needs of the rest of the batch. */
export interface LabelContext {
  readonly formula: FormulaSlice;
  readonly formulaValues: FormulaValues;
  readonly table: CompositionTable;
  /** Null where nobody fetched them: nutrition is then not known. */
  readonly details: DetailsTable | null;
  /** After chilling, g. */
  readonly finishedG: number | null;
  /** What the moulds weighed when filled, all of them, g. */
  readonly filledByMouldsG: number | null;
  /** A mould is lined with food. */
  readonly foodLining: boolean;
  /** Crust and jelly, from their own worksheets. */
  readonly carried: readonly CarriedFood[];
  /** When the first cook began or ended, ISO 8601. */
  readonly firstCookAt: string | null;
  /** Use-by as it stands on the batch sheet. */
  readonly writtenUseBy: string;
  /** A brine or a dry cure brings salt and sugar that stand in no line. Left out: none does. */
  readonly curedElsewhere?: boolean;
  /** It may bring nitrite too. */
  readonly nitriteElsewhere?: boolean;
}

/** Where the mass in the moulds is known from. */
export type FilledFrom = 'typed' | 'moulds' | 'bowl';

/** A stressed ingredient and what is declared of it. */
export interface DeclaredQuantity extends Quid {
  readonly lineIds: readonly string[];
  /** `settled`; or meat whose limits nobody can apply for want of collagen: the figure is then the most it can be. */
  readonly state: 'settled' | 'cannot-tell';
}

/** Null is unknown. */
export interface LabelValues {
  readonly parts: readonly LabelPart[];
  readonly filledG: number | null;
  readonly filledFrom: FilledFrom | null;
  /** Everything that is in the food: filled mix, lining, crust, jelly; g. */
  readonly ingoingG: number | null;
  readonly finishedG: number | null;
  readonly yieldFraction: number | null;
  readonly eu: readonly ListedIngredient[];
  readonly us: readonly ListedIngredient[];
  readonly euAllergens: readonly Allergen[];
  readonly usAllergens: readonly Allergen[];
  readonly meat: readonly MeatGroup[];
  readonly quantities: readonly DeclaredQuantity[] | null;
  readonly addedWaterFraction: number | null;
  readonly nutrition: Nutrition | null;
  readonly usPanel: readonly UsRow[] | null;
  readonly euTable: readonly PanelRow<EuRowId>[] | null;
  /** The same per serving, exact: rounded by the rule for 100 g. */
  readonly euPerServing: readonly PanelRow<EuRowId>[] | null;
  readonly servingG: number | null;
  readonly netG: number | null;
  readonly servings: Servings | null;
  readonly warnings: readonly AudienceWarning[];
  readonly nitrite: boolean;
  readonly cookedOn: string | null;
  readonly lifeDays: number | null;
  readonly useBy: string | null;
  readonly storeAtC: number | null;
}
