import type { Batch } from '@larderwright/calc/batch';
import { type BlendSlice, type BlendValues, blendStage, newBlendSlice } from '@larderwright/calc/blend';
import type { Finding, MissingInput, Verdict } from '@larderwright/calc/findings';
import { type CompositionTable, loadIngredients } from '@larderwright/calc/ingredients';
import { type SourceId, sourceOf } from '@larderwright/calc/sources';
import * as say from '#words/lean-and-fat/compute.ts';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { nowIso } from '../state/clock.ts';
import { blendWords } from '../words/blend.ts';
import { learnWords } from '../words/index.ts';
import { type BlendCardModel, blendCard } from './card-model.ts';

/** What calc makes of the blend on the bench. */
export interface BlendComputed {
  readonly values: BlendValues;
  readonly findings: readonly Finding[];
  /** The square judged by the standard of the name it is sold under. */
  readonly verdicts: readonly Verdict[];
  readonly missing: readonly MissingInput[];
  /** By material id: where its figures come from, in words. */
  readonly figures: ReadonlyMap<string, string>;
  readonly slice: BlendSlice;
  readonly currency: string;
  readonly head: CardHead;
  readonly card: BlendCardModel;
}

/** Where the figures of a material come from. */
function figuresText(material: BlendSlice['materials'][number], table: CompositionTable): string {
  const row = material.ingredientId === null ? undefined : table.get(material.ingredientId);
  if (!row) return material.name.trim() === '' ? '' : say.noTableFiguresWriteThePacks;
  const source: SourceId | null = row.source;
  const from = source === null ? say.noSource : sourceOf(source).title;
  return row.name === material.name ? say.figures(from) : say.figures2(row.name, from);
}

/** Fetches the composition table and gives the function that balances a batch with it. */
export async function loadBlend(): Promise<(batch: Batch) => BlendComputed> {
  const composition = await loadIngredients();
  learnWords(blendWords);
  return (batch) => {
    const slice = batch.blend ?? newBlendSlice();
    const currency = batch.plan?.currency ?? '';
    const result = blendStage(slice, { composition, familyId: batch.formula.familyId });
    return {
      ...result,
      figures: new Map(slice.materials.map((material) => [material.id, figuresText(material, composition)])),
      slice,
      currency,
      head: cardHead(batch, [], nowIso()),
      card: blendCard(slice, result.values, result.verdicts, currency),
    };
  };
}
