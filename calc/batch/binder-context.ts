import type { BinderContext } from '../binder/index.ts';
import type { Mix } from '../formula/index.ts';
import type { CompositionTable } from '../ingredients/index.ts';
import type { MouldValues } from '../mould/index.ts';
import { entryValue } from '../quantities/index.ts';
import type { Batch } from './record.ts';

/** What the rest of a batch tells about binders and garnish: the slice is cut from its first mould. */
export function binderContext(
  batch: Batch,
  { meatBlockG, totalG }: Pick<Mix, 'meatBlockG' | 'totalG'>,
  { moulds }: MouldValues,
  composition: CompositionTable,
): BinderContext {
  const dimensions = batch.mould.moulds[0]?.dimensions;
  return {
    meatG: meatBlockG,
    totalG,
    finishedG: entryValue('mass', batch.product.finished),
    mixDensityGPerMl: entryValue('density', batch.mould.density),
    mouldWidthMm: dimensions
      ? (entryValue('length', dimensions.width) ?? entryValue('length', dimensions.diameter))
      : null,
    mouldHeightMm: moulds[0]?.fillDepthMm ?? null,
    composition,
  };
}
