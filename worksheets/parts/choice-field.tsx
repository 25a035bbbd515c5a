import type { Finding } from '@larderwright/calc/findings';
import { useId } from 'preact/hooks';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { FieldFrame } from './field-frame.tsx';

interface Choice {
  value: string;
  label: string;
}

interface ChoiceFieldProps {
  label: string;
  value: string;
  choices: readonly Choice[];
  /** Shown while nothing is chosen; leaving it means "not chosen". */
  empty?: string;
  hint?: string;
  findings?: readonly Finding[];
  onChoose: (value: string) => void;
  compact?: boolean;
}

/** One of a short list. */
export function ChoiceField(props: ChoiceFieldProps) {
  const { label, value, choices, empty, hint, findings, onChoose, compact = false } = props;
  const id = useId();
  const waking = useShared($life) === 'waking';
  const control = (
    <select
      id={id}
      class="field-choice"
      value={value}
      disabled={waking}
      aria-label={compact ? label : undefined}
      onChange={(event) => onChoose(event.currentTarget.value)}
    >
      {empty === undefined ? null : <option value="">{empty}</option>}
      {choices.map((choice) => (
        <option key={choice.value} value={choice.value}>
          {choice.label}
        </option>
      ))}
    </select>
  );
  if (compact) return <div class="field field-compact">{control}</div>;
  return (
    <FieldFrame id={id} label={label} hint={hint} findings={findings}>
      {control}
    </FieldFrame>
  );
}
