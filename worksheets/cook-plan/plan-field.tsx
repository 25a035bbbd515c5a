import type { Finding } from '@larderwright/calc/findings';
import type { QuantityKind, Range, Unit } from '@larderwright/calc/quantities';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';

export const TEMPS: readonly Unit[] = ['C', 'F'];
export const LENGTHS: readonly Unit[] = ['mm', 'cm', 'in'];
export const MINUTES: readonly Unit[] = ['min', 'h'];

interface PlanFieldProps {
  of: string;
  label: string;
  kind: QuantityKind;
  units?: readonly Unit[];
  range?: Range;
  hint?: string;
  findings: readonly Finding[];
  compact?: boolean;
}

/** A number of the cook plan. */
export function PlanField({ of, findings, ...field }: PlanFieldProps) {
  const path = `cookPlan.${of}`;
  return <NumberField path={path} findings={at(findings, path)} {...field} />;
}

interface PlanChoiceProps {
  of: string;
  label: string;
  names: Readonly<Record<string, string>>;
  hint?: string;
  findings?: readonly Finding[];
}

/** A choice of the cook plan. */
export function PlanChoice({ of, label, names, hint, findings = [] }: PlanChoiceProps) {
  const path = `cookPlan.${of}`;
  return (
    <ChoiceField
      label={label}
      value={String(useAt(path))}
      choices={Object.entries(names).map(([value, name]) => ({ value, label: name }))}
      onChoose={(value) => editAt(path, value)}
      hint={hint}
      findings={at(findings, path)}
    />
  );
}
