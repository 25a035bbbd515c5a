import { type FunctionComponent, h, render } from 'preact';
import type { SiteLinks } from '../parts/links.ts';
import { openExample } from '../state/example.ts';
import { ExampleHead, type ExampleHeadProps } from './example-head.tsx';
import { Example, type ExampleMode } from './mode.ts';

/** A worksheet as its own page shows it: the same component with the same properties. */
export interface Island {
  Worksheet: FunctionComponent<{ links: SiteLinks; standing: string }>;
  links: SiteLinks;
  standing: string;
}

export interface ExampleSetting extends ExampleHeadProps {
  /** Address of the example's record. */
  example: string;
}

let mounted = 0;

/**
 * Shows a worksheet in a place of a technique page, on that page's example.
 * @returns the way to take it away again
 */
export function mountExample(place: Element, island: Island, setting: ExampleSetting): () => void {
  const { Worksheet, ...given } = island;
  const mode: ExampleMode = {
    open: () => void openExample(setting.example),
    Head: () => <ExampleHead worksheet={setting.worksheet} />,
  };
  const tree = h(Example.Provider, { value: mode }, <Worksheet {...given} />);
  // Preact numbers the ids of its fields within one tree. Each tree of the page gets a mark of its own.
  mounted += 1;
  render(Object.assign(tree, { __m: [mounted, 0] }), place);
  return () => render(null, place);
}
