import type { Batch } from '@larderwright/calc/batch';
import type { PlanCosts, PlanSlice, Price } from '@larderwright/calc/plan';
import type { SlicingSlice, SlicingValues } from '@larderwright/calc/slicing';
import * as say from '#words/slice-and-price/card-model.ts';
import { filled, worked } from '../batch-sheet/build/filled.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import { moneyText } from '../words/money.ts';
import { PRICING_SHARES } from '../words/plan-names.ts';

/** A price before and with tax, as printed. */
export interface PriceRow {
  readonly id: string;
  readonly label: string;
  readonly exTax: Filled | null;
  readonly incTax: Filled | null;
}

/** The card of a cut as plain words and numbers. Null prints as a box to write in. */
export interface SlicingCardModel {
  readonly cutBy: string;
  readonly inputs: Readonly<
    Record<
      | 'finished'
      | 'moulds'
      | 'length'
      | 'thickness'
      | 'endTrim'
      | 'kerf'
      | 'slicesPerPortion'
      | 'packMass'
      | 'endLoss'
      | 'share'
      | 'tax',
      Filled | null
    >
  >;
  readonly shareName: string;
  readonly results: Readonly<
    Record<
      'perMould' | 'slices' | 'sliceMass' | 'portions' | 'portion' | 'sold' | 'food' | 'full',
      Filled | null
    >
  >;
  readonly prices: readonly PriceRow[];
}

function made(text: string | null): Filled | null {
  return text === null ? null : { text, flag: 'W' };
}

/** The card of a cut. */
export function slicingCard(
  batch: Batch,
  slice: SlicingSlice,
  plan: PlanSlice,
  values: SlicingValues,
  known: { readonly mouldCount: number | null; readonly costs: PlanCosts },
): SlicingCardModel {
  const { finishedG, lengthMm, cut } = values;
  const money = (amount: number | null) => made(amount === null ? null : moneyText(amount, plan.currency));
  const price = (id: string, label: string, { exTax, incTax }: Price): PriceRow => ({
    id,
    label,
    exTax: money(exTax),
    incTax: money(incTax),
  });
  const byThickness = slice.cutBy === 'thickness';
  const share = { 'gross-profit': plan.grossProfit, 'food-cost': plan.foodCost, margin: plan.margin };
  return {
    cutBy: byThickness ? say.slicesOfAThickness : say.portionsOfAWeight,
    inputs: {
      finished: filled('mass', batch.product.finished, 'g') ?? worked(finishedG, true),
      moulds: made(known.mouldCount === null ? null : `${known.mouldCount}`),
      length: filled('length', slice.length, 'mm') ?? made(lengthMm === null ? null : `${lengthMm} mm`),
      thickness: byThickness ? filled('length', slice.thickness, 'mm') : null,
      endTrim: byThickness ? filled('length', slice.endTrim, 'mm') : null,
      kerf: byThickness ? filled('length', slice.kerf, 'mm') : null,
      slicesPerPortion: byThickness ? filled('count', slice.slicesPerPortion, 'count', false) : null,
      packMass: byThickness ? null : filled('mass', slice.packMass, 'g'),
      endLoss: byThickness ? null : filled('fraction', slice.endLoss, '%'),
      share: filled('fraction', share[plan.pricing], '%'),
      tax: filled('fraction', plan.tax, '%'),
    },
    shareName: PRICING_SHARES[plan.pricing].short,
    results: {
      perMould: worked(values.perMouldG, true),
      slices: made(values.slices === null ? null : `${values.slices}`),
      sliceMass: worked(cut?.sliceG ?? null, true),
      portions: made(values.portions === null ? null : `${values.portions}`),
      portion: worked(values.portionG, true),
      sold: worked(values.soldG, true),
      food: money(known.costs.food),
      full: money(known.costs.full),
    },
    prices: [
      price('portion', say.aPortion, values.pricePerPortion),
      price('slice', say.aSlice, values.pricePerSlice),
      price('kg', say.aKilogram, values.pricePerKg),
      price('lb', say.aPound, values.pricePerLb),
    ],
  };
}
