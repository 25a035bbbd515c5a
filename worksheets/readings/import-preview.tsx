import type { PastedLog } from '@larderwright/calc/probe-log';
import * as say from '#words/readings/import-preview.ts';
import { dayWords, durationWords, wallOf } from '../parts/clock-text.ts';
import { PasteRemarks } from './paste-remarks.tsx';
import { pasteSpan } from './read-paste.ts';

/** Rows shown from either end. */
const ENDS = 3;

const TIMES: Record<PastedLog['times'], string> = {
  stamp: say.datesAndTimesAsTheyStand,
  clock: say.timesOfDayFromTheDay,
  elapsed: say.timeSinceTheStart,
};

function moment(iso: string): string {
  const wall = wallOf(iso);
  return wall ? say.on(wall.clock, dayWords(wall.date)) : iso;
}

interface ImportPreviewProps {
  log: PastedLog;
  logName: string;
  onTake: (log: PastedLog) => void;
}

/** What was understood of a log. Nothing is in the batch until the button is pressed. */
export function ImportPreview({ log, logName, onTake }: ImportPreviewProps) {
  const { readings, warnings } = log;
  const span = pasteSpan(log);
  const units = [...new Set(readings.map((row) => `°${row.temperature.unit}`))].join(say.and);
  const unread = readings.filter((row) => !row.readable).length;
  const ends = readings.length > ENDS * 2 ? [...readings.slice(0, ENDS), ...readings.slice(-ENDS)] : readings;
  return (
    <div class="import-preview">
      <p>
        <strong>{say.understood}</strong>{' '}
        {say.readingsInTimes(
          readings.length,
          span
            ? say.fromTo(moment(span.fromIso), moment(span.toIso), durationWords(span.minutes, 'down'))
            : '',
          units,
          TIMES[log.times],
          log.heading ? say.coreFromTheColumn(log.heading) : '',
          unread > 0 ? say.withoutTemperatureCanRead(unread) : '',
        )}
      </p>
      <table>
        <caption>{say.firstAndLastReadings}</caption>
        <thead>
          <tr>
            <th scope="col">{say.line}</th>
            <th scope="col">{say.time}</th>
            <th scope="col">{say.core}</th>
          </tr>
        </thead>
        <tbody>
          {ends.map((row) => (
            <tr key={row.line}>
              <td class="n">{row.line}</td>
              <td>{moment(row.at)}</td>
              <td class="n">
                {row.temperature.text.slice(0, 20) || say.blank} °{row.temperature.unit}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <PasteRemarks warnings={warnings} />
      <p class="buttons">
        <button type="button" class="press-first" onClick={() => onTake(log)}>
          {say.takeTheseReadingsInto(readings.length, logName)}
        </button>
      </p>
    </div>
  );
}
