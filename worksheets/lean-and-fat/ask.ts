import type { BlendSlice } from '@larderwright/calc/blend';
import { leastCostBlend, leastCostFindings } from '@larderwright/calc/blend';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { blendWords } from '../words/blend.ts';
import { learnWords } from '../words/index.ts';
import type { Asked } from './asked.ts';

/** Solves for the cheapest blend. The solver is fetched by this call and not before. */
export async function askLeastCost(slice: BlendSlice, currency: string): Promise<Asked> {
  const composition = await loadIngredients();
  learnWords(blendWords);
  const answer = await leastCostBlend(slice, { composition });
  return { slice, answer, findings: leastCostFindings(answer, slice, currency) };
}
