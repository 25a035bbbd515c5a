import { asEntry, editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { NumberBox, type NumberBoxProps } from './number-box.tsx';

interface NumberFieldProps extends Omit<NumberBoxProps, 'entry' | 'onEntry'> {
  /** Where the entry stands in the batch. */
  path: string;
}

/** A number of the batch, edited in its place. */
export function NumberField({ path, ...box }: NumberFieldProps) {
  const entry = asEntry(useAt(path), path);
  return <NumberBox {...box} entry={entry} onEntry={(next) => editAt(path, next)} />;
}
