import type { Batch } from '@larderwright/calc/batch';
import { csvText, type DecimalMark, safeFileName } from '@larderwright/calc/exchange';
import { useId } from 'preact/hooks';
import * as say from '#words/records-desk/table-files.ts';
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
      <h3>{say.asATableForASpreadsheet}</h3>
      <div class="field desk-batch">
        <label class="field-label" for={id}>
          {say.decimalsInTheTable}
        </label>
        <select
          id={id}
          class="field-choice"
          value={mark}
          onChange={(event) => onMark(event.currentTarget.value === 'comma' ? 'comma' : 'point')}
        >
          <option value="point">{say.n125ColumnsPartedByCommas}</option>
          <option value="comma">{say.n125ColumnsPartedBySemicolons}</option>
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
          {say.formulaLines(batch.formula.lines.length)}
        </button>
        <button
          type="button"
          disabled={readings === 0}
          onClick={() =>
            onSave(safeFileName([...names, 'readings'], 'csv'), csvText(readingRows(batch), mark), 'text/csv')
          }
        >
          {say.readingsOfThem(readings)}
        </button>
      </p>
    </>
  );
}
