import type { Batch, BatchState, Dispatch } from './record.ts';
import { stateOf } from './state.ts';
import { folded, type LotUse, lotsOf, type Traceable } from './trace.ts';

/** A batch as a list shows it and a search finds it. Made from the record, never edited. */
export interface BatchSummary extends Traceable {
  readonly id: string;
  readonly name: string;
  readonly batchNo: string;
  readonly kitchen: string;
  readonly familyId: string | null;
  readonly demo: boolean;
  readonly state: BatchState;
  /** Who brought it into that state and when; '' where nobody said. */
  readonly stateBy: string;
  readonly stateAt: string;
  /** The day of the work: the first step or reading, else the day it was begun. `YYYY-MM-DD`. */
  readonly day: string;
  readonly updatedAt: string;
  readonly lots: readonly LotUse[];
  readonly dispatches: readonly Dispatch[];
  /** All that is searched, folded. */
  readonly words: string;
}

function dayOf({ process, createdAt }: Batch): string {
  const moments = [
    ...process.steps.flatMap(({ startedAt }) => (startedAt === null ? [] : [startedAt])),
    ...process.logs.flatMap(({ readings }) => readings.slice(0, 1).map(({ at }) => at)),
  ];
  return (moments.toSorted()[0] ?? createdAt).slice(0, 10);
}

/**
 * The summary of a record.
 *
 * @param stateWords the states as the screen calls them, so that they can be searched
 */
export function summaryOf(batch: Batch, stateWords: Readonly<Record<BatchState, string>>): BatchSummary {
  const { product, formula } = batch;
  const { state, change } = stateOf(batch);
  const lots = lotsOf(batch);
  const day = dayOf(batch);
  const words = [
    ...[product.name, product.batchNo, product.kitchen, product.madeBy, day, stateWords[state]],
    ...formula.lines.map(({ name }) => name),
    ...lots.map(({ lot }) => lot),
    ...batch.dispatches.map(({ to }) => to),
  ];
  return {
    id: batch.id,
    name: product.name.trim(),
    batchNo: product.batchNo.trim(),
    kitchen: product.kitchen.trim(),
    familyId: formula.familyId,
    demo: batch.demo,
    state,
    stateBy: change?.by ?? '',
    stateAt: change?.at ?? '',
    day,
    updatedAt: batch.updatedAt,
    lots,
    dispatches: batch.dispatches,
    words: folded(words.join(' \n ')),
  };
}

/** Summaries whose words answer every word typed, in any order, accents and case aside. Nothing typed: all. */
export function searchSummaries<T extends Pick<BatchSummary, 'words'>>(
  list: readonly T[],
  text: string,
): T[] {
  const wanted = folded(text).split(' ').filter(Boolean);
  return wanted.length === 0
    ? [...list]
    : list.filter(({ words }) => wanted.every((word) => words.includes(word)));
}
