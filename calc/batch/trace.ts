import { unitLabel } from '../quantities/index.ts';
import { isBranch, isEntry } from './entry-shape.ts';
import type { Batch, Dispatch } from './record.ts';

/** A lot that went into a batch, and with what. */
export interface LotUse {
  readonly lot: string;
  /** What it is a lot of: "Pork liver". */
  readonly name: string;
  /** As weighed, else as planned; '' where neither is known. */
  readonly amount: string;
}

/** A text as it is compared: no accents, no case, one space between words. */
export function folded(text: string): string {
  return text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase().replaceAll(/\s+/g, ' ').trim();
}

/** A lot as it is compared: letters and digits alone, for a dash or a space is soon lost at the bench. */
function foldedLot(lot: string): string {
  return folded(lot).replaceAll(/[^\p{L}\p{N}]/gu, '');
}

const weighed = (value: unknown) => (isEntry(value) && value.text.trim() !== '' ? value : null);

/** Every lot of a batch, wherever in the record it stands: formula, curing salts of brine and dry cure, or later. */
export function lotsOf(batch: Batch): LotUse[] {
  const found: LotUse[] = [];
  const walk = (value: unknown): void => {
    if (Array.isArray(value)) value.forEach(walk);
    if (!isBranch(value) || isEntry(value)) return;
    const { lot, name, actual, amount } = value;
    if (typeof lot === 'string' && lot.trim() !== '') {
      const grams = weighed(actual) ?? weighed(amount);
      found.push({
        lot: lot.trim(),
        name: typeof name === 'string' ? name.trim() : '',
        amount: grams ? `${grams.text.trim()} ${unitLabel(grams.unit)}` : '',
      });
    }
    for (const [key, part] of Object.entries(value)) if (key !== 'history' && key !== 'issued') walk(part);
  };
  walk(batch);
  return found;
}

/** A batch as far as a recall needs it. */
export interface Traceable {
  readonly id: string;
  readonly batchNo: string;
  readonly lots: readonly LotUse[];
  readonly dispatches: readonly Dispatch[];
}

/** A batch that holds a lot, itself or through another batch that went into it. */
export interface Traced<T extends Traceable> {
  readonly batch: T;
  readonly uses: readonly LotUse[];
  /** Number of the batch through which it holds the lot; null: it holds the lot itself. */
  readonly through: string | null;
}

/**
 * Every batch that holds a lot. A batch whose own number stands as a lot in another, as trim or rework does, carries
 * the lot into that one too, and so on.
 *
 * @param lot a whole lot or the beginning of one; blank finds nothing
 */
export function batchesWithLot<T extends Traceable>(batches: readonly T[], lot: string): Traced<T>[] {
  const wanted = foldedLot(lot);
  if (wanted === '') return [];
  const traced = new Map<string, Traced<T>>();
  const add = (fits: (folded: string) => boolean, through: string | null) => {
    const fresh: T[] = [];
    for (const batch of batches) {
      if (traced.has(batch.id)) continue;
      const uses = batch.lots.filter((use) => fits(foldedLot(use.lot)));
      if (uses.length === 0) continue;
      traced.set(batch.id, { batch, uses, through });
      fresh.push(batch);
    }
    return fresh;
  };
  let fresh = add((each) => each.startsWith(wanted), null);
  while (fresh.length > 0) {
    fresh = fresh.flatMap(({ batchNo }) => {
      const number = foldedLot(batchNo);
      return number === '' ? [] : add((each) => each === number, batchNo);
    });
  }
  return [...traced.values()];
}
