import type { Finding } from '@larderwright/calc/findings';
import type { Entry, QuantityKind, Range, Unit } from '@larderwright/calc/quantities';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import * as say from '#words/parts/number-box.ts';
import { $life } from '../state/store.ts';
import { LONGEST_LINE } from '../state/typed.ts';
import { useShared } from '../state/use-shared.ts';
import { unitName } from '../words/unit-names.ts';
import { FieldFrame } from './field-frame.tsx';
import { $fieldReader, fetchFieldReader } from './field-reader.ts';
import { useTyping } from './use-typing.ts';

export interface NumberBoxProps {
  label: string;
  kind: QuantityKind;
  entry: Entry;
  onEntry: (entry: Entry) => void;
  /** Units offered. With one only, it is printed behind the field. */
  units?: readonly Unit[] | undefined;
  /** Stands in the place of the unit: a choice that means more than a unit. */
  unitSlot?: ComponentChildren;
  /** The field's own limits, in base units. */
  range?: Range | undefined;
  hint?: ComponentChildren;
  findings?: readonly Finding[] | undefined;
  /** Curing salt: nothing but grams is taken. */
  gramsOnly?: boolean | undefined;
  /** For a row under headings: the label is shown only where the row is stacked. */
  compact?: boolean | undefined;
}

/**
 * A number with its unit. What was typed is kept letter for letter; what was understood is shown back,
 * because `12,5` and `125` look alike to a tired eye.
 */
export function NumberBox(props: NumberBoxProps) {
  const { label, kind, entry, onEntry, units, unitSlot, hint, findings, compact } = props;
  const { range, gramsOnly = false } = props;
  const id = useId();
  const waking = useShared($life) === 'waking';
  const { onInput, cutNote } = useTyping(LONGEST_LINE, (text) => {
    fetchFieldReader();
    onEntry({ ...entry, text, origin: 'entered' });
  });
  const readField = useShared($fieldReader);
  const { problem, readBack } = readField(kind, entry, range ? { gramsOnly, range } : { gramsOnly });
  return (
    <FieldFrame
      id={id}
      label={label}
      hint={hint}
      problem={cutNote ? `${problem ?? ''} ${cutNote}`.trim() : problem}
      readBack={readBack}
      isDefault={entry.origin === 'default' && entry.text !== ''}
      findings={findings}
      compact={compact}
    >
      <input
        id={id}
        class="field-input"
        type="text"
        inputMode="decimal"
        autocomplete="off"
        spellcheck={false}
        value={entry.text}
        readOnly={waking}
        aria-invalid={problem ? 'true' : undefined}
        aria-describedby={`${id}-says`}
        onInput={onInput}
      />
      {unitSlot ??
        (units && units.length > 1 ? (
          <select
            class="field-unit"
            aria-label={say.unitOf(label)}
            value={entry.unit}
            disabled={waking}
            onChange={(event) =>
              onEntry({ ...entry, unit: event.currentTarget.value as Unit, origin: 'entered' })
            }
          >
            {units.map((unit) => (
              <option key={unit} value={unit}>
                {unitName(unit)}
              </option>
            ))}
          </select>
        ) : (
          <span class="field-unit">{unitName(entry.unit)}</span>
        ))}
    </FieldFrame>
  );
}
