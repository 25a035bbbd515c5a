import type { Batch } from '@larderwright/calc/batch';
import type { Finding, MissingInput } from '@larderwright/calc/findings';
import { formulaStage } from '@larderwright/calc/formula';
import {
  newSeasoningSlice,
  type SeasoningSlice,
  type SeasoningValues,
  seasoningStage,
} from '@larderwright/calc/seasoning';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { nowIso } from '../state/clock.ts';
import { type OwnLine, ownLines } from '../state/own-lines.ts';
import { learnWords } from '../words/index.ts';
import { seasoningWords } from '../words/seasoning.ts';
import { jarBlocks } from './jar-blocks.ts';
import { SEASONING_LINE, seasoningLines } from './to-formula.ts';

/** What calc makes of the seasoning, its card, and the lines it would be in the formula. */
export interface SeasoningComputed {
  readonly slice: SeasoningSlice;
  readonly values: SeasoningValues;
  readonly findings: readonly Finding[];
  readonly missing: readonly MissingInput[];
  /** Lines for the formula; null while some weight is unknown, or the mix is not the formula's. */
  readonly lines: readonly OwnLine[] | null;
  readonly head: CardHead;
  readonly blocks: readonly CardBlock[];
}

learnWords(seasoningWords);

/** Weights need no composition: the table is not fetched for this page. */
const NO_TABLE = new Map();

/** Seasons a batch for the page and the card. */
export function computeSeasoning(batch: Batch): SeasoningComputed {
  const slice = batch.seasoning ?? newSeasoningSlice();
  const now = nowIso();
  const context = { totalG: totalWithSeasoning(batch, slice), today: now.slice(0, 10) };
  const { values, findings, missing } = seasoningStage(slice, context);
  const head = cardHead(batch, [], now);
  return {
    slice,
    values,
    findings,
    missing,
    lines: slice.batch.text.trim() === '' ? seasoningLines(slice, values) : null,
    head,
    blocks: jarBlocks(batch, slice, values),
  };
}

/**
 * Everything in the bowl once this seasoning is in it, g: doses count on the whole, themselves included. What is already
 * written of it comes off first, so that writing it twice changes nothing.
 */
export function totalWithSeasoning(batch: Batch, slice: SeasoningSlice): number | null {
  const { mix } = formulaStage(batch.formula, { composition: NO_TABLE }).values;
  if (mix.totalG === null) return null;
  const own = new Set(ownLines(batch.formula.lines, SEASONING_LINE).map(({ id }) => id));
  const ownG = mix.lines.reduce((sum, { lineId, massG }) => sum + (own.has(lineId) ? (massG ?? 0) : 0), 0);
  // A batch of one kilogram tells the doses: grams of its seasoning are g/kg.
  const perKg = seasoningStage(
    { ...slice, batch: { text: '1', unit: 'kg', origin: 'entered' } },
    { totalG: null, today: null },
  ).values.totalG;
  if (perKg === null || perKg >= 1000) return mix.totalG;
  return (mix.totalG - ownG) / (1 - perKg / 1000);
}
