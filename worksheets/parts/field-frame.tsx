import type { Finding } from '@larderwright/calc/findings';
import type { ComponentChildren } from 'preact';
import * as say from '#words/parts/field-frame.ts';
import { FindingLine } from './finding-line.tsx';

interface FieldFrameProps {
  id: string;
  label: string;
  /** What the field is a share of, or how to measure it. */
  hint?: ComponentChildren;
  /** A message that stops the value from being used. */
  problem?: string | undefined;
  /** What was understood, shown back. */
  readBack?: string | undefined;
  isDefault?: boolean | undefined;
  findings?: readonly Finding[] | undefined;
  /** In a row with a heading of its own: the label is shown only where the row is stacked. */
  compact?: boolean | undefined;
  children: ComponentChildren;
}

/** Label, control and everything said about the control, always in the same order. */
export function FieldFrame(props: FieldFrameProps) {
  const { id, label, hint, problem, readBack, isDefault, findings = [], compact = false, children } = props;
  return (
    <div class={compact ? 'field field-compact' : 'field'} data-problem={problem ? 'yes' : undefined}>
      <label class="field-label" for={id}>
        {label}
        {isDefault ? <span class="field-default"> {say.defaultWord}</span> : null}
      </label>
      <div class="field-line">{children}</div>
      <div class="field-says" id={`${id}-says`}>
        {problem ? <p class="field-problem">{problem}</p> : null}
        {readBack ? <p class="field-read-back">{readBack}</p> : null}
        {findings.map((finding, index) => (
          // Two findings of one kind can meet at one field.
          <FindingLine key={`${finding.id}-${index}`} finding={finding} />
        ))}
        {hint ? <p class="field-hint">{hint}</p> : null}
      </div>
    </div>
  );
}
