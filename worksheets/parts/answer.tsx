import type { ComponentChildren } from 'preact';

interface AnswerProps {
  label: string;
  /** The number with its unit, ready to read; null when it cannot be worked out. */
  value: string | null;
  /** Why there is no number. */
  missing?: string;
  /** The formula in words, opened on demand. */
  worked?: ComponentChildren;
}

/** A number worked out from the batch, with its formula behind it. */
export function Answer({ label, value, missing = 'Cannot tell: an input is missing', worked }: AnswerProps) {
  return (
    <div class="answer">
      <p class="answer-label">{label}</p>
      <p class={value === null ? 'answer-value answer-missing' : 'answer-value'}>{value ?? missing}</p>
      {worked ? (
        <details class="worked">
          <summary>How it is worked out</summary>
          <div class="worked-body">{worked}</div>
        </details>
      ) : null}
    </div>
  );
}
