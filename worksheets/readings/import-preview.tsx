import type { PastedLog } from '@larderwright/calc/probe-log';
import { dayWords, durationWords, wallOf } from '../parts/clock-text.ts';
import { PasteRemarks } from './paste-remarks.tsx';
import { pasteSpan } from './read-paste.ts';

/** Rows shown from either end. */
const ENDS = 3;

const TIMES: Record<PastedLog['times'], string> = {
  stamp: 'dates and times as they stand there',
  clock: 'times of day, from the day you chose',
  elapsed: 'time since the start',
};

function moment(iso: string): string {
  const wall = wallOf(iso);
  return wall ? `${wall.clock} on ${dayWords(wall.date)}` : iso;
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
  const units = [...new Set(readings.map((row) => `°${row.temperature.unit}`))].join(' and ');
  const unread = readings.filter((row) => !row.readable).length;
  const ends = readings.length > ENDS * 2 ? [...readings.slice(0, ENDS), ...readings.slice(-ENDS)] : readings;
  return (
    <div class="import-preview">
      <p>
        <strong>Understood:</strong> {readings.length} readings
        {span
          ? `, from ${moment(span.fromIso)} to ${moment(span.toIso)} (${durationWords(span.minutes, 'down')})`
          : ''}
        , in {units}. Times: {TIMES[log.times]}.{log.heading ? ` Core from the column "${log.heading}".` : ''}
        {unread > 0 ? ` ${unread} without a temperature that can be read.` : ''}
      </p>
      <table>
        <caption>First and last readings</caption>
        <thead>
          <tr>
            <th scope="col">Line</th>
            <th scope="col">Time</th>
            <th scope="col">Core</th>
          </tr>
        </thead>
        <tbody>
          {ends.map((row) => (
            <tr key={row.line}>
              <td class="n">{row.line}</td>
              <td>{moment(row.at)}</td>
              <td class="n">
                {row.temperature.text.slice(0, 20) || 'blank'} °{row.temperature.unit}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <PasteRemarks warnings={warnings} />
      <p class="buttons">
        <button type="button" class="press-first" onClick={() => onTake(log)}>
          Take these {readings.length} readings into {logName}
        </button>
      </p>
    </div>
  );
}
