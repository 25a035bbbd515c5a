import type { Finding } from '@larderwright/calc/findings';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import * as say from '#words/parts/choice-field.ts';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { FieldFrame } from './field-frame.tsx';

export interface Choice {
  value: string;
  label: string;
}

interface ChoiceFieldProps {
  label: string;
  value: string;
  choices: readonly Choice[];
  /** Shown while nothing is chosen; leaving it means "not chosen". */
  empty?: string;
  hint?: ComponentChildren;
  findings?: readonly Finding[];
  onChoose: (value: string) => void;
  compact?: boolean;
  isDefault?: boolean;
}

/** One of a short list. */
export function ChoiceField(props: ChoiceFieldProps) {
  const { label, value, choices, empty, hint, findings, onChoose, compact, isDefault } = props;
  const id = useId();
  const waking = useShared($life) === 'waking';
  // A value of a newer or older list stays visible as it is instead of turning into the first choice.
  const unknown = value !== '' && !choices.some((choice) => choice.value === value);
  return (
    <FieldFrame id={id} label={label} hint={hint} findings={findings} compact={compact} isDefault={isDefault}>
      <select
        id={id}
        class="field-choice"
        value={value}
        disabled={waking}
        aria-describedby={`${id}-says`}
        onChange={(event) => onChoose(event.currentTarget.value)}
      >
        {empty === undefined ? null : <option value="">{empty}</option>}
        {unknown ? <option value={value}>{say.notInThisList(value)}</option> : null}
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
    </FieldFrame>
  );
}
