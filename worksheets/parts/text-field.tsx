import type { Finding } from '@larderwright/calc/findings';
import { useId } from 'preact/hooks';
import { getAt } from '../state/paths.ts';
import { $batch, $life, editAt } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { FieldFrame } from './field-frame.tsx';

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
  const value = String(getAt(useShared($batch), path) ?? '');
  const waking = useShared($life) === 'waking';
  const shared = {
    id,
    class: 'field-input field-words',
    value,
    readOnly: waking,
    autocomplete: 'off',
    'aria-label': compact ? label : undefined,
    onInput: (event: { currentTarget: { value: string } }) => editAt(path, event.currentTarget.value),
  } as const;
  const control = long ? <textarea {...shared} rows={3} /> : <input {...shared} type="text" />;
  if (compact) return <div class="field field-compact">{control}</div>;
  return (
    <FieldFrame id={id} label={label} hint={hint} findings={findings}>
      {control}
    </FieldFrame>
  );
}
