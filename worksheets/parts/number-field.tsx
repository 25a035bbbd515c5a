import type { Finding } from '@larderwright/calc/findings';
import { type QuantityKind, readEntry, type Unit } from '@larderwright/calc/quantities';
import { useId } from 'preact/hooks';
import { $batch, $life, editAt, entryAt } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { issueWords, readBackWords, unitName } from '../words/quantities.ts';
import { FieldFrame } from './field-frame.tsx';

interface NumberFieldProps {
  /** Where the entry stands in the batch. */
  path: string;
  label: string;
  kind: QuantityKind;
  /** Units offered. With one only, it is printed behind the field. */
  units?: readonly Unit[];
  hint?: string;
  findings?: readonly Finding[];
  /** Curing salt: nothing but grams is taken. */
  gramsOnly?: boolean;
  /** For a table cell: the label is read aloud but not shown. */
  compact?: boolean;
}

/**
 * A number with its unit. What was typed is kept letter for letter; what was understood is shown back,
 * because `12,5` and `125` look alike to a tired eye.
 */
export function NumberField(props: NumberFieldProps) {
  const { path, label, kind, units, hint, findings, gramsOnly = false, compact = false } = props;
  const id = useId();
  const entry = entryAt(useShared($batch), path);
  const waking = useShared($life) === 'waking';
  const read = readEntry(kind, entry, { gramsOnly });
  const problem = read.state === 'bad' ? issueWords(read.issue) : undefined;
  const readBack = read.state === 'ok' ? readBackWords(kind, entry, read.value) : undefined;

  const control = (
    <>
      <input
        id={id}
        class="field-input"
        type="text"
        inputMode="decimal"
        autocomplete="off"
        spellcheck={false}
        value={entry.text}
        readOnly={waking}
        aria-label={compact ? label : undefined}
        aria-invalid={problem ? 'true' : undefined}
        aria-describedby={`${id}-says`}
        onInput={(event) => editAt(path, { ...entry, text: event.currentTarget.value, origin: 'entered' })}
      />
      {units && units.length > 1 ? (
        <select
          class="field-unit"
          aria-label={`Unit of ${label}`}
          value={entry.unit}
          disabled={waking}
          onChange={(event) =>
            editAt(path, { ...entry, unit: event.currentTarget.value as Unit, origin: 'entered' })
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
      )}
    </>
  );

  if (compact) {
    return (
      <div class="field field-compact" data-problem={problem ? 'yes' : undefined}>
        <div class="field-line">{control}</div>
        <div class="field-says" id={`${id}-says`}>
          {problem ? <p class="field-problem">{problem}</p> : null}
          {readBack ? <p class="field-read-back">{readBack}</p> : null}
        </div>
      </div>
    );
  }
  return (
    <FieldFrame
      id={id}
      label={label}
      hint={hint}
      problem={problem}
      readBack={readBack}
      isDefault={entry.origin === 'default' && entry.text !== ''}
      findings={findings}
    >
      {control}
    </FieldFrame>
  );
}
