import type { ComponentChildren } from 'preact';
import * as say from '#words/parts/answer.ts';
import { Worked } from './worked.tsx';

interface AnswerProps {
  label: string;
  /** The number with its unit, ready to read; null when it cannot be worked out. */
  value: string | null;
  /** Why there is no number. */
  missing?: string | undefined;
  /** The formula in words, opened on demand. */
  worked: NonNullable<ComponentChildren>;
  /** What can be done with the number. */
  children?: ComponentChildren;
}

/** A number worked out from the batch, with its formula behind it. */
export function Answer(props: AnswerProps) {
  const { label, value, missing = say.cannotTellAnInputIsMissing, worked, children } = props;
  return (
    <div class="answer">
      <p class="answer-label">{label}</p>
      <p class={value === null ? 'answer-value answer-missing' : 'answer-value'}>{value ?? missing}</p>
      {children}
      {worked ? <Worked>{worked}</Worked> : null}
    </div>
  );
}
