import * as say from '#words/label/line-slips.ts';
import { useShared } from '../state/use-shared.ts';
import { $label } from './computed.ts';
import { LineSlip } from './line-slip.tsx';

/** Every ingredient of the formula as the label sees it. */
export function LineSlips() {
  const computed = useShared($label);
  if (computed.state !== 'ready') return null;
  const { values, findings } = computed.value;
  const parts = values.parts.filter(({ line }) => line !== null);
  if (parts.length === 0) return <p class="say">{say.formulaHasNoIngredientsYet}</p>;
  return (
    <ol class="label-slips">
      {parts.map((part) => (
        <LineSlip key={part.id} part={part} findings={findings} />
      ))}
    </ol>
  );
}
