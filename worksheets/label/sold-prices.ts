import type { Batch } from '@larderwright/calc/batch';
import { entryValue, fixedText } from '@larderwright/calc/quantities';
import { slicingStage } from '@larderwright/calc/slicing';
import { planOf } from '../plan-and-cost/plan-of.ts';

/** Prices to print, in the kitchen's money, tax included where it is known. */
export interface SoldPrices {
  readonly perSlice: string | null;
  readonly perKg: string | null;
  readonly perLb: string | null;
}

/** Prices of the plan, shared among what slicing says is sold; null without both. */
export function soldPrices(batch: Batch): SoldPrices | null {
  if (!batch.plan || !batch.slicing) return null;
  const { values, moulds, plan } = planOf(batch, null);
  const counts = batch.mould.moulds.map(({ count }) => entryValue('count', count));
  const mouldCount = counts.includes(null) ? null : counts.reduce<number>((sum, n) => sum + (n ?? 0), 0);
  const first = batch.mould.moulds[0];
  const { values: sold } = slicingStage(batch.slicing, {
    familyId: batch.formula.familyId,
    finishedG: entryValue('mass', batch.product.finished),
    mouldCount,
    mouldLengthMm: first && moulds.length === 1 ? entryValue('length', first.dimensions.length) : null,
    plannedPortions: entryValue('count', batch.product.portions),
    plan: { costs: values.costs, pricing: values.pricing },
  });
  const text = ({ exTax, incTax }: { exTax: number | null; incTax: number | null }) => {
    const price = incTax ?? exTax;
    return price === null
      ? null
      : `${fixedText(price, 2)}${plan.currency ? ` ${plan.currency}` : ''}${incTax === null ? ' before tax' : ''}`;
  };
  return { perSlice: text(sold.pricePerSlice), perKg: text(sold.pricePerKg), perLb: text(sold.pricePerLb) };
}
