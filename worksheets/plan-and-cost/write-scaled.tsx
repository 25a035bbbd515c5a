import { type FormulaLine, scaleToTotal } from '@larderwright/calc/formula';
import { useEffect, useRef, useState } from 'preact/hooks';
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
            Write these weights into the formula
          </button>
          <small class="field-hint">
            Weights and lots already written down belong to the old size and are cleared.
          </small>
        </p>
      ) : null}
      <div class="removed-row" role="status">
        {undoable ? (
          <>
            <span>The formula was scaled to the plan.</span>
            <button
              ref={undo}
              type="button"
              onClick={() => {
                editAt('formula.lines', undoable.lines);
                setBefore(null);
              }}
            >
              Put the old weights back
            </button>
          </>
        ) : null}
      </div>
    </>
  );
}
