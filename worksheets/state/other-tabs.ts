import type { MergeConflict } from '@larderwright/calc/batch';

/**
 * What tabs of one device tell each other: which record was written, and how often by now. The record itself is read
 * from the database, so a message that is lost does no harm: the next write finds the other number.
 */
export interface Written {
  readonly id: string;
  /** 0: the record was taken away. */
  readonly rev: number;
  /** Fields in which the writer's value stands and this tab's does not. */
  readonly conflicts?: readonly MergeConflict[];
}

const CHANNEL = 'larderwright.batches';
let channel: BroadcastChannel | null | undefined;

function open(): BroadcastChannel | null {
  if (channel === undefined)
    channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(CHANNEL);
  return channel;
}

export function announce(written: Written): void {
  open()?.postMessage(written);
}

/** Hears what other tabs write. Returns the way to stop. */
export function hearOtherTabs(hear: (written: Written) => void): () => void {
  const here = open();
  if (!here) return () => {};
  const listen = ({ data }: MessageEvent<Written>) => hear(data);
  here.addEventListener('message', listen);
  return () => here.removeEventListener('message', listen);
}
