import type { ComponentChildren } from 'preact';
import * as say from '#words/parts/worked.ts';

/** A formula in words with the batch's own numbers, opened on demand. */
export function Worked({ children }: { children: ComponentChildren }) {
  return (
    <details class="worked">
      <summary>{say.howItIsWorkedOut}</summary>
      <div class="worked-body">{children}</div>
    </details>
  );
}
