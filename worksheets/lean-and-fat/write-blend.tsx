import type { FormulaLine } from '@larderwright/calc/formula';
import { useEffect, useRef, useState } from 'preact/hooks';
import * as say from '#words/lean-and-fat/write-blend.ts';
import { newId } from '../state/clock.ts';
import { $batch, editAt } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { type BlendMass, linesWithBlend } from './blend-edits.ts';

/** Writes a blend into the lines of the formula, and gives the old ones back if asked. */
export function WriteBlend({ masses, what }: { masses: readonly BlendMass[]; what: string }) {
  const batch = useShared($batch);
  const [before, setBefore] = useState<{ lines: FormulaLine[]; batchId: string } | null>(null);
  const undo = useRef<HTMLButtonElement>(null);
  const undoable = before?.batchId === batch.id ? before : null;
  useEffect(() => {
    if (undoable) undo.current?.focus();
  }, [undoable]);
  const write = () => {
    const { lines } = batch.formula;
    setBefore({ lines, batchId: batch.id });
    editAt('formula.lines', linesWithBlend(lines, batch.blend?.materials ?? [], masses, newId));
  };
  return (
    <>
      <p class="buttons">
        <button type="button" onClick={write}>
          {say.writeIntoTheFormula(what)}
        </button>
        <small class="field-hint">{say.lineSameIngredientTakesNew}</small>
      </p>
      <div class="removed-row" role="status">
        {undoable ? (
          <>
            <span>{say.theBlendStandsInTheFormula}</span>
            <button
              ref={undo}
              type="button"
              onClick={() => {
                editAt('formula.lines', undoable.lines);
                setBefore(null);
              }}
            >
              {say.putTheOldLinesBack}
            </button>
          </>
        ) : null}
      </div>
    </>
  );
}
