/** One measured thing. A subject's file lists its entries; `run.ts` finds every such file and prints one table. */
export interface Entry {
  /** What is measured, in plain words. */
  readonly name: string;
  readonly unit: 'ms' | 'µs' | 'MB' | 'B' | '×' | '°C' | 'min' | 'count';
  /** What it is held to, in the same unit. Left out: only reported. */
  readonly target?: number;
  /** How often it is measured; the median and the spread are printed. Seven unless told. */
  readonly runs?: number;
  /** One measurement. The first is thrown away when there are several. */
  readonly measure: () => number | Promise<number>;
  /** The same work done another way, measured in the same session; the ratio of the two medians is printed. */
  readonly against?: { readonly name: string; readonly measure: () => number | Promise<number> };
  /** Said beside the figure, after the measurements. */
  readonly note?: () => string;
}

/** A file `<subject>.bench.ts` has one as its default export. Its entries are made when it is asked for. */
export interface Subject {
  readonly subject: string;
  readonly entries: () => readonly Entry[] | Promise<readonly Entry[]>;
  /** Puts away what the entries needed: a browser, a server, a copy. */
  readonly close?: () => Promise<void>;
}

/** Milliseconds of processor time of this process that some work takes: others on the machine count for less. */
export function processorMs(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? Number.NaN) + upper) / 2;
}
