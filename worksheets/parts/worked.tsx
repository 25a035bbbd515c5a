import type { ComponentChildren } from 'preact';

/** A formula in words with the batch's own numbers, opened on demand. */
export function Worked({ children }: { children: ComponentChildren }) {
  return (
    <details class="worked">
      <summary>How it is worked out</summary>
      <div class="worked-body">{children}</div>
    </details>
  );
}
