import type { BlendSlice } from '@larderwright/calc/blend';
import { judgeStandard, leastCostBlend, leastCostFindings } from '@larderwright/calc/blend';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { blendWords } from '../words/blend.ts';
import { learnWords } from '../words/index.ts';
import type { Asked } from './asked.ts';
import { standardOnPaper } from './card-model.ts';

/** Solves for the cheapest blend. The solver is fetched by this call and not before. */
export async function askLeastCost(slice: BlendSlice, currency: string): Promise<Asked> {
  const composition = await loadIngredients();
  learnWords(blendWords);
  const answer = await leastCostBlend(slice, { composition });
  const makeup = answer.state === 'optimal' ? answer.blend.makeup : null;
  const verdicts = makeup === null ? [] : judgeStandard(slice, makeup);
  return {
    slice,
    answer,
    findings: leastCostFindings(answer, slice, currency),
    verdicts,
    paper: standardOnPaper(verdicts),
  };
}
