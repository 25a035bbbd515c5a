import { useState } from 'preact/hooks';
import { clockAt, dateAt, dayWords } from '../parts/clock-text.ts';
import type { CurveModel, CurvePoint, PointMark } from './model.ts';
import { tempText } from './temp-text.ts';
import { thinned } from './trace.ts';

const MARK_WORD: Record<PointMark, string> = { taken: '', excluded: 'excluded', flagged: 'flagged' };
/** A long logger file is thinned to about this many rows a probe; every reading stands in the log itself. */
const MOST_ROWS = 240;

const byTime = (points: readonly CurvePoint[]) => [...points].sort((a, b) => a.atMs - b.atMs);

/** The readings behind a chart as a table. Built when it is opened: a log may be long. */
export function CurveTable({ model, title }: { model: CurveModel; title: string }) {
  const [open, setOpen] = useState(false);
  return (
    <details class="curve-data" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>The same as a table</summary>
      {open
        ? model.series.map((series) => {
            const rows = thinned(byTime(series.points), MOST_ROWS / 4);
            return (
              <table key={series.id}>
                <caption>
                  {title}: {series.name}
                  {rows.length < series.points.length
                    ? ` (${rows.length} of ${series.points.length} readings; highest and lowest kept)`
                    : ''}
                </caption>
                <thead>
                  <tr>
                    <th scope="col">Day</th>
                    <th scope="col">Time</th>
                    <th scope="col">Core °C</th>
                    <th scope="col">Mark</th>
                  </tr>
                </thead>
                <tbody>
                  {rows.map((point) => (
                    <tr key={point.id}>
                      <td>{dayWords(dateAt(point.atMs, model.offsetMin))}</td>
                      <td class="n">{clockAt(point.atMs, model.offsetMin)}</td>
                      <td class="n">{tempText(point.tempC)}</td>
                      <td>{MARK_WORD[point.mark]}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            );
          })
        : null}
    </details>
  );
}
