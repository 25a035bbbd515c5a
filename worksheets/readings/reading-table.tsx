import type { ProbeLog } from '@larderwright/calc/process';
import { useEffect, useState } from 'preact/hooks';
import * as say from '#words/readings/reading-table.ts';
import { dayWords, wallOf } from '../parts/clock-text.ts';
import { byTime } from './edits.ts';
import { ReadingRow } from './reading-row.tsx';

/** Rows shown at once. A logger's file can hold thousands. */
const PAGE = 24;
/** Rows on paper: beyond this the batch sheet prints the readings that decide. */
const MOST_ON_PAPER = 1000;

interface ReadingTableProps {
  log: ProbeLog;
  name: string;
  /** Corrected core in words by reading id. */
  corrected: ReadonlyMap<string, string>;
  /** What is to be said, by reading id. */
  says: ReadonlyMap<string, readonly string[]>;
  /** Show only readings from this moment on. */
  fromMs?: number | null;
}

/** True while the page is being set on paper. */
function usePrinting(): boolean {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    const begin = () => setPrinting(true);
    const end = () => setPrinting(false);
    addEventListener('beforeprint', begin);
    addEventListener('afterprint', end);
    return () => {
      removeEventListener('beforeprint', begin);
      removeEventListener('afterprint', end);
    };
  }, []);
  return printing;
}

const NOTHING: readonly string[] = [];

/** The readings of one log in order of time, each to be put right or excluded. The last page stands open. */
export function ReadingTable({ log, name, corrected, says, fromMs = null }: ReadingTableProps) {
  const all = byTime(log.readings);
  const rows = fromMs === null ? all : all.filter((reading) => !(Date.parse(reading.at) < fromMs));
  const onPaper = usePrinting();
  const length = onPaper ? MOST_ON_PAPER : PAGE;
  const pages = Math.max(1, Math.ceil(rows.length / length));
  const [chosen, setChosen] = useState<number | null>(null);
  const page = Math.min(chosen ?? pages - 1, pages - 1);
  const shown = rows.slice(page * length, (page + 1) * length);
  const before = all.length - rows.length;
  let day = '';
  return (
    <div class="readings">
      {before > 0 ? <p class="say">{say.earlierReadingsCookCookLog(before)}</p> : null}
      {pages > 1 ? (
        <p class="readings-pages">
          <button type="button" disabled={page === 0} onClick={() => setChosen(page - 1)}>
            {say.earlier}
          </button>
          <span>{say.readingsToOf(page * length + 1, page * length + shown.length, rows.length)}</span>
          <button type="button" disabled={page === pages - 1} onClick={() => setChosen(page + 1)}>
            {say.later}
          </button>
        </p>
      ) : null}
      <table class="readings-table">
        <caption>
          {name}: {rows.length === 1 ? say.n1Reading : say.readings(rows.length)}
        </caption>
        <thead>
          <tr>
            <th scope="col">{say.timeDay}</th>
            <th scope="col">{say.core}</th>
            <th scope="col">{say.initials}</th>
            <th scope="col">{say.saidAboutIt}</th>
          </tr>
        </thead>
        <tbody>
          {shown.flatMap((reading) => {
            const date = wallOf(reading.at)?.date ?? '';
            const head =
              date === day
                ? []
                : [
                    <tr key={`day-${date}`} class="readings-day">
                      <th colSpan={4} scope="colgroup">
                        {dayWords(date)}
                      </th>
                    </tr>,
                  ];
            day = date;
            return [
              ...head,
              <ReadingRow
                key={reading.id}
                logId={log.id}
                reading={reading}
                corrected={corrected.get(reading.id) ?? null}
                says={says.get(reading.id) ?? NOTHING}
              />,
            ];
          })}
        </tbody>
      </table>
    </div>
  );
}
