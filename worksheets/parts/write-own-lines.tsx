import type { FormulaLine } from '@larderwright/calc/formula';
import { useEffect, useRef, useState } from 'preact/hooks';
import * as say from '#words/parts/write-own-lines.ts';
import { hasOwnLines, type OwnLine, withOwnLines } from '../state/own-lines.ts';
import { $batch, editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';

interface WriteOwnLinesProps {
  /** Null while some weight is unknown. */
  lines: readonly OwnLine[] | null;
  prefix: string;
  /** "Write these grams into the formula". */
  label: string;
  hint: string;
  /** What is told when it is done. */
  done: string;
}

/** Writes a worksheet's weights into the lines of the formula, and gives the old lines back if asked. */
export function WriteOwnLines({ lines, prefix, label, hint, done }: WriteOwnLinesProps) {
  const formula = useAt('formula.lines') as readonly FormulaLine[];
  const [before, setBefore] = useState<{ lines: readonly FormulaLine[]; batchId: string } | null>(null);
  const undo = useRef<HTMLButtonElement>(null);
  const undoable = before?.batchId === $batch.get().id ? before : null;
  useEffect(() => {
    if (undoable) undo.current?.focus();
  }, [undoable]);
  const write = () => {
    if (!lines) return;
    const { id, formula: now } = $batch.get();
    setBefore({ lines: now.lines, batchId: id });
    editAt('formula.lines', withOwnLines(now.lines, lines, prefix));
  };
  return (
    <>
      {lines && lines.length > 0 && !hasOwnLines(formula, lines, prefix) ? (
        <p class="buttons">
          <button type="button" onClick={write}>
            {label}
          </button>
          <small class="field-hint">{hint}</small>
        </p>
      ) : null}
      <div class="removed-row" role="status">
        {undoable ? (
          <>
            <span>{done}</span>
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
