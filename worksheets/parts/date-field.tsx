import type { Finding } from '@larderwright/calc/findings';
import { useId } from 'preact/hooks';
import { $life, editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { dayWords } from './day-words.ts';
import { FieldFrame } from './field-frame.tsx';

interface DateFieldProps {
  /** Where the ISO date stands in the batch; '' is unknown. */
  path: string;
  label: string;
  hint?: string;
  findings?: readonly Finding[];
}

/** A day, read back in words. */
export function DateField({ path, label, hint, findings }: DateFieldProps) {
  const id = useId();
  const value = String(useAt(path) ?? '');
  const waking = useShared($life) === 'waking';
  return (
    <FieldFrame
      id={id}
      label={label}
      hint={hint}
      readBack={value === '' ? undefined : dayWords(value)}
      findings={findings}
    >
      <input
        id={id}
        class="field-input field-day"
        type="date"
        value={value}
        readOnly={waking}
        aria-describedby={`${id}-says`}
        onChange={(event) => editAt(path, event.currentTarget.value)}
      />
    </FieldFrame>
  );
}
