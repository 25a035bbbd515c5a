import { useState } from 'preact/hooks';
import * as say from '#words/compare/side-by-side.ts';
import type { Shelved } from '../state/database.ts';
import { COMPARE_WORDS } from '../words/compare.ts';
import { ReadingLine } from './reading-line.tsx';
import { type CompareRow, compareGroups } from './rows.ts';
import { useFigures } from './use-figures.ts';

/** The chosen batches as columns. A row that differs says so in words. */
export function SideBySide({ batches }: { batches: readonly Shelved[] }) {
  const [onlyDiffering, setOnly] = useState(false);
  const figures = useFigures(batches);
  if (figures.state !== 'ready') return <ReadingLine figures={figures} />;
  const shown = (rows: readonly CompareRow[]) =>
    rows.filter(
      ({ differs, cells }) =>
        (differs || !onlyDiffering) && (!onlyDiffering || cells.some((cell) => cell !== null)),
    );
  return (
    <>
      <ReadingLine figures={figures} />
      <label class="compare-tick no-print">
        <input type="checkbox" checked={onlyDiffering} onChange={() => setOnly(!onlyDiffering)} />
        <span>{say.onlyRowsThatDiffer}</span>
      </label>
      <section class="scroll" tabindex={0} aria-label={say.batchesSideBySide}>
        <table class="compare-table">
          <thead>
            <tr>
              <th scope="col">{say.what}</th>
              {figures.figures.map(({ id, name, batchNo, day, demo }) => (
                <th key={id} scope="col">
                  {name || say.unnamedBatch} <small>{[batchNo, day].filter(Boolean).join(' · ')}</small>{' '}
                  {demo ? <span class="demo-mark">{say.demo}</span> : null}
                </th>
              ))}
            </tr>
          </thead>
          {compareGroups(figures.figures).map(({ title, rows }) => (
            <tbody key={title}>
              <tr>
                <th scope="rowgroup" colSpan={figures.figures.length + 1} class="compare-group">
                  {title}
                </th>
              </tr>
              {shown(rows).map((row) => (
                <Row key={row.id} row={row} ids={figures.figures.map(({ id }) => id)} />
              ))}
            </tbody>
          ))}
        </table>
      </section>
    </>
  );
}

function Row({ row: { label, cells, differs }, ids }: { row: CompareRow; ids: readonly string[] }) {
  return (
    <tr data-differs={differs ? 'yes' : undefined}>
      <th scope="row">
        {label} {differs ? <strong class="differs">≠ {COMPARE_WORDS.differs}</strong> : null}
      </th>
      {cells.map((cell, at) => (
        <td key={ids[at]}>{cell ?? <span class="unrecorded">{COMPARE_WORDS.notRecorded}</span>}</td>
      ))}
    </tr>
  );
}
