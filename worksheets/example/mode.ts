import { createContext, type FunctionComponent } from 'preact';

/** What a worksheet shows and does at its head in place of the batch on the bench. */
export interface ExampleMode {
  /** Brings the example into the page's store. */
  open: () => void;
  Head: FunctionComponent;
}

/** Set above a worksheet that stands in a technique page; null on its own page. */
export const Example = createContext<ExampleMode | null>(null);
