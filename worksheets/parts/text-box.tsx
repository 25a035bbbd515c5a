import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { $life } from '../state/store.ts';
import { LONGEST_LINE } from '../state/typed.ts';
import { useShared } from '../state/use-shared.ts';
import { FieldFrame } from './field-frame.tsx';
import { useTyping } from './use-typing.ts';

interface TextBoxProps {
  label: string;
  text: string;
  onText: (text: string) => void;
  hint?: ComponentChildren;
  problem?: string | undefined;
  compact?: boolean;
  /** Narrow, for initials. */
  short?: boolean;
}

/** One line of words that need not stand in the batch yet. */
export function TextBox({ label, text, onText, hint, problem, compact, short = false }: TextBoxProps) {
  const id = useId();
  const waking = useShared($life) === 'waking';
  const { onInput, cutNote } = useTyping(LONGEST_LINE, onText);
  return (
    <FieldFrame id={id} label={label} hint={hint} problem={problem ?? cutNote} compact={compact}>
      <input
        id={id}
        class={short ? 'field-input field-initials' : 'field-input field-words'}
        type="text"
        autocomplete="off"
        spellcheck={false}
        value={text}
        readOnly={waking}
        aria-invalid={problem ? 'true' : undefined}
        aria-describedby={`${id}-says`}
        onInput={onInput}
      />
    </FieldFrame>
  );
}
