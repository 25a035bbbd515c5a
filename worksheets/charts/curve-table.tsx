import { useState } from 'preact/hooks';
import * as say from '#words/charts/curve-table.ts';
import { dayWords } from '../parts/clock-text.ts';
import type { CurveModel, CurvePoint, PointMark } from './model.ts';
import { tempText } from './temp-text.ts';
import { dayOf, timeText } from './time-text.ts';
import { thinned } from './trace.ts';

const MARK_WORD: Record<PointMark, string> = { taken: '', excluded: say.excluded, flagged: say.flagged };
/** A long logger file is thinned to about this many rows a probe; every reading stands in the log itself. */
const MOST_ROWS = 240;

const byTime = (points: readonly CurvePoint[]) => [...points].sort((a, b) => a.atMs - b.atMs);

const TABLE_EVERY_MS = 10 * 60_000;

/** A predicted curve is known at every minute: a row for every ten. */
function everyTenth(points: readonly CurvePoint[]): CurvePoint[] {
  return points.filter(
    ({ atMs }, i) => i === 0 || i === points.length - 1 || Math.abs(atMs % TABLE_EVERY_MS) < 1,
  );
}

/** The readings behind a chart as a table. Built when it is opened: a log may be long. */
export function CurveTable({ model, title }: { model: CurveModel; title: string }) {
  const [open, setOpen] = useState(false);
  const elapsed = model.clock === 'elapsed';
  return (
    <details class="curve-data" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{say.theSameAsATable}</summary>
      {open
        ? model.series.map((series) => {
            const points = byTime(series.points);
            const rows = series.predicted ? everyTenth(points) : thinned(points, MOST_ROWS / 4);
            return (
              <table key={series.id}>
                <caption>
                  {title}: {series.name}
                  {series.predicted ? say.predictedNobodyMeasuredIt : null}
                  {rows.length < series.points.length && !series.predicted
                    ? say.ofReadingsHighestAndLowestKept(rows.length, series.points.length)
                    : ''}
                </caption>
                <thead>
                  <tr>
                    {elapsed ? null : <th scope="col">{say.day}</th>}
                    <th scope="col">{elapsed ? say.sinceItWentIn : say.time}</th>
                    <th scope="col">{say.coreC}</th>
                    {series.predicted ? null : <th scope="col">{say.mark}</th>}
                  </tr>
                </thead>
                <tbody>
                  {rows.map((point) => (
                    <tr key={point.id}>
                      {elapsed ? null : <td>{dayWords(dayOf(model, point.atMs))}</td>}
                      <td class="n">{timeText(model, point.atMs)}</td>
                      <td class="n">{tempText(point.tempC)}</td>
                      {series.predicted ? null : <td>{MARK_WORD[point.mark]}</td>}
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
