import type { Finding } from '@larderwright/calc/findings';
import { useId } from 'preact/hooks';
import { $life, editAt } from '../state/store.ts';
import { LONGEST_LINE, LONGEST_NOTE } from '../state/typed.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { FieldFrame } from './field-frame.tsx';
import { useTyping } from './use-typing.ts';

interface TextFieldProps {
  path: string;
  label: string;
  hint?: string;
  findings?: readonly Finding[];
  /** More than one line. */
  long?: boolean;
  compact?: boolean;
}

/** Words of the person's own: a name, a lot, a note. */
export function TextField({ path, label, hint, findings, long = false, compact = false }: TextFieldProps) {
  const id = useId();
  const value = String(useAt(path) ?? '');
  const waking = useShared($life) === 'waking';
  const { onInput, cutNote } = useTyping(long ? LONGEST_NOTE : LONGEST_LINE, (text) => editAt(path, text));
  const shared = {
    id,
    class: 'field-input field-words',
    value,
    readOnly: waking,
    autocomplete: 'off',
    'aria-describedby': `${id}-says`,
    onInput,
  } as const;
  return (
    <FieldFrame id={id} label={label} hint={hint} problem={cutNote} findings={findings} compact={compact}>
      {long ? <textarea {...shared} rows={3} /> : <input {...shared} type="text" />}
    </FieldFrame>
  );
}
