import type { Batch } from '@larderwright/calc/batch';
import { csvText, type DecimalMark, safeFileName } from '@larderwright/calc/exchange';
import { useId } from 'preact/hooks';
import { formulaRows } from './formula-rows.ts';
import { readingRows } from './reading-rows.ts';

interface TableFilesProps {
  batch: Batch;
  /** First words of the file name. */
  names: readonly string[];
  mark: DecimalMark;
  onMark: (mark: DecimalMark) => void;
  onSave: (name: string, text: string, type: string) => void;
}

/** Formula and readings for a spreadsheet. */
export function TableFiles({ batch, names, mark, onMark, onSave }: TableFilesProps) {
  const id = useId();
  const readings = batch.process.logs.reduce((sum, log) => sum + log.readings.length, 0);
  return (
    <>
      <h3>As a table, for a spreadsheet</h3>
      <div class="field desk-batch">
        <label class="field-label" for={id}>
          Decimals in the table
        </label>
        <select
          id={id}
          class="field-choice"
          value={mark}
          onChange={(event) => onMark(event.currentTarget.value === 'comma' ? 'comma' : 'point')}
        >
          <option value="point">12.5, columns parted by commas</option>
          <option value="comma">12,5, columns parted by semicolons</option>
        </select>
      </div>
      <p class="buttons">
        <button
          type="button"
          disabled={batch.formula.lines.length === 0}
          onClick={() =>
            onSave(safeFileName([...names, 'formula'], 'csv'), csvText(formulaRows(batch), mark), 'text/csv')
          }
        >
          Formula, {batch.formula.lines.length} lines
        </button>
        <button
          type="button"
          disabled={readings === 0}
          onClick={() =>
            onSave(safeFileName([...names, 'readings'], 'csv'), csvText(readingRows(batch), mark), 'text/csv')
          }
        >
          Readings, {readings} of them
        </button>
      </p>
    </>
  );
}
