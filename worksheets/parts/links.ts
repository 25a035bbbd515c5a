import { createContext } from 'preact';

/** Addresses the site hands down: worksheets build no URL of their own. */
export interface SiteLinks {
  /** Folder the demo batches are fetched from, with a trailing slash. */
  demoBase: string;
  /** The list of limits that were withdrawn. */
  limitsStanding: string;
  /** The page of all batches of this device. */
  batches: string;
  /** What is set once for this device. */
  settings: string;
  /** Every clock that runs on this device. */
  clocks: string;
  /** The published form of a file of batches. */
  schema: string;
  /** Caution pages by slug. */
  cautions: Readonly<Record<string, string>>;
  /** Worksheet pages by name (`batch-formula`, `salt-and-cure`, …). */
  worksheets: Readonly<Record<string, string>>;
}

export const Links = createContext<SiteLinks>({
  demoBase: '',
  limitsStanding: '',
  batches: '',
  settings: '',
  clocks: '',
  schema: '',
  cautions: {},
  worksheets: {},
});
