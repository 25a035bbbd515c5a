import type { Batch } from '@larderwright/calc/batch';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/label/sold-as.ts';
import { slicingOf } from '../slice-and-price/slicing-of.ts';

/** What slicing makes of the batch, for its label. */
export interface Sold {
  /** Prices in the kitchen's money, tax included where it is known. */
  readonly perSlice: string | null;
  readonly perKg: string | null;
  readonly perLb: string | null;
  /** A portion, g. */
  readonly portionG: number | null;
}

/** Prices of the plan, shared among what slicing says is sold, and a portion; null where nobody slices. */
export function soldAs(batch: Batch): Sold | null {
  if (!batch.slicing) return null;
  const { values, planned } = slicingOf(batch);
  const { currency } = planned.plan;
  const text = ({ exTax, incTax }: { exTax: number | null; incTax: number | null }) => {
    const price = incTax ?? exTax;
    return price === null
      ? null
      : `${fixedText(price, 2)}${currency ? ` ${currency}` : ''}${incTax === null ? say.beforeTax : ''}`;
  };
  return {
    perSlice: text(values.pricePerSlice),
    perKg: text(values.pricePerKg),
    perLb: text(values.pricePerLb),
    portionG: values.portionG,
  };
}
