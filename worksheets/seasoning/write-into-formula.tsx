import type { FormulaLine } from '@larderwright/calc/formula';
import { useEffect, useRef, useState } from 'preact/hooks';
import { $batch, editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { isWritten, type SeasoningLine, withSeasoning } from './to-formula.ts';

interface WriteIntoFormulaProps {
  lines: readonly SeasoningLine[] | null;
  /** The mix is the formula's own. */
  fromFormula: boolean;
}

/** Writes the grams into the lines of the formula, and gives the old lines back if asked. */
export function WriteIntoFormula({ lines, fromFormula }: WriteIntoFormulaProps) {
  const formula = useAt('formula.lines') as readonly FormulaLine[];
  const [before, setBefore] = useState<{ lines: readonly FormulaLine[]; batchId: string } | null>(null);
  const undo = useRef<HTMLButtonElement>(null);
  const undoable = before?.batchId === $batch.get().id ? before : null;
  useEffect(() => {
    if (undoable) undo.current?.focus();
  }, [undoable]);
  if (!fromFormula)
    return (
      <p class="say">
        The total mix was typed by hand. Leave it blank to write these grams into the formula of the batch.
      </p>
    );
  const write = () => {
    if (!lines) return;
    const { id, formula: now } = $batch.get();
    setBefore({ lines: now.lines, batchId: id });
    editAt('formula.lines', withSeasoning(now.lines, lines));
  };
  return (
    <>
      {lines && lines.length > 0 && !isWritten(formula, lines) ? (
        <p class="buttons">
          <button type="button" onClick={write}>
            Write these grams into the formula
          </button>
          <small class="field-hint">
            Lines this page wrote before are replaced. Seasonings you wrote into the formula yourself stay:
            take them out if they are the same.
          </small>
        </p>
      ) : null}
      <div class="removed-row" role="status">
        {undoable ? (
          <>
            <span>The seasoning stands in the formula.</span>
            <button
              ref={undo}
              type="button"
              onClick={() => {
                editAt('formula.lines', undoable.lines);
                setBefore(null);
              }}
            >
              Put the old lines back
            </button>
          </>
        ) : null}
      </div>
    </>
  );
}
