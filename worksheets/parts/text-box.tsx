import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { $life } from '../state/store.ts';
import { LONGEST_LINE, LONGEST_NOTE } from '../state/typed.ts';
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
  /** More than one line. */
  long?: boolean;
}

/** Words that need not stand in the batch yet. */
export function TextBox(props: TextBoxProps) {
  const { label, text, onText, hint, problem, compact, short = false, long = false } = props;
  const id = useId();
  const waking = useShared($life) === 'waking';
  const { onInput, cutNote } = useTyping(long ? LONGEST_NOTE : LONGEST_LINE, onText);
  const shared = {
    id,
    class: short ? 'field-input field-initials' : 'field-input field-words',
    value: text,
    readOnly: waking,
    autocomplete: 'off',
    'aria-invalid': problem ? 'true' : undefined,
    'aria-describedby': `${id}-says`,
    onInput,
  } as const;
  return (
    <FieldFrame id={id} label={label} hint={hint} problem={problem ?? cutNote} compact={compact}>
      {long ? <textarea {...shared} rows={3} /> : <input {...shared} type="text" spellcheck={false} />}
    </FieldFrame>
  );
}
