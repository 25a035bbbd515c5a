/** The index's own script, as far as it is used here. */
export interface SearchScript {
  createInstance(options: { basePath: string; noWorker: boolean }): SearchIndex;
}

/** The part of an opened index that is used here. */
export interface SearchIndex {
  init(): Promise<void>;
  filters(): Promise<unknown>;
  search(term: string | null, options?: { filters?: Record<string, string> }): Promise<Found>;
}

export interface Found {
  readonly results: readonly Hit[];
}

export interface Hit {
  readonly id: string;
  readonly score: number;
  data(): Promise<HitData>;
}

export interface HitData {
  readonly url: string;
  readonly meta: Readonly<Record<string, string>>;
  readonly filters: Readonly<Record<string, readonly string[]>>;
  /** Escaped text with <mark> around what matched. */
  readonly excerpt: string;
  readonly sub_results: readonly {
    title: string;
    url: string;
    excerpt: string;
    locations?: readonly number[];
  }[];
}
