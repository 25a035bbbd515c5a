import { newBlendMaterial } from '@larderwright/calc/blend';
import type { FormulaLine } from '@larderwright/calc/formula';
import * as say from '#words/lean-and-fat/add-material.ts';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { $life, editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';

/** Adds a material, or takes those of the formula. */
export function AddMaterial() {
  const waking = useShared($life) === 'waking';
  const materials = useAt('blend.materials') as readonly unknown[];
  const lines = useAt('formula.lines') as readonly FormulaLine[];
  // Fetched when pressed: what it needs of the formula is not for an empty page.
  const take = () => {
    import('./blend-edits.ts').then(
      ({ materialsOf }) => editAt('blend.materials', materialsOf(lines, newId)),
      () => undefined,
    );
  };
  return (
    <div class="buttons">
      <button
        type="button"
        class="press-first"
        disabled={waking}
        onClick={() => addRow('blend.materials', newBlendMaterial(newId(), 'lean'))}
      >
        {say.addAMaterial}
      </button>
      {materials.length === 0 && lines.length > 0 ? (
        <button type="button" disabled={waking} onClick={take}>
          {say.takeTheMeatOfTheFormula}
        </button>
      ) : null}
    </div>
  );
}
