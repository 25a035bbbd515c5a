import { type FormulaLine, scaleToTotal } from '@larderwright/calc/formula';
import { useEffect, useRef, useState } from 'preact/hooks';
import * as say from '#words/plan-and-cost/write-scaled.ts';
import { $batch, editAt } from '../state/store.ts';

/** The noise of dividing decimal weights. */
const SAME = 1e-6;

/** Writes the weights of the plan into the formula, and gives the old ones back if asked. */
export function WriteScaled({ mixG, factor }: { mixG: number | null; factor: number | null }) {
  const [before, setBefore] = useState<{ lines: FormulaLine[]; batchId: string } | null>(null);
  const undo = useRef<HTMLButtonElement>(null);
  const undoable = before?.batchId === $batch.get().id ? before : null;
  useEffect(() => {
    if (undoable) undo.current?.focus();
  }, [undoable]);
  const differs = factor !== null && Math.abs(factor - 1) > SAME;
  const write = () => {
    const { id, formula } = $batch.get();
    const scaled = mixG === null ? null : scaleToTotal(formula.lines, mixG);
    if (!scaled?.ok) return;
    setBefore({ lines: formula.lines, batchId: id });
    editAt('formula.lines', scaled.lines);
  };
  return (
    <>
      {differs ? (
        <p class="buttons">
          <button type="button" onClick={write}>
            {say.writeTheseWeightsIntoFormula}
          </button>
          <small class="field-hint">{say.weightsLotsAlreadyWrittenDown}</small>
        </p>
      ) : null}
      <div class="removed-row" role="status">
        {undoable ? (
          <>
            <span>{say.theFormulaWasScaledToThe}</span>
            <button
              ref={undo}
              type="button"
              onClick={() => {
                editAt('formula.lines', undoable.lines);
                setBefore(null);
              }}
            >
              {say.putTheOldWeightsBack}
            </button>
          </>
        ) : null}
      </div>
    </>
  );
}
