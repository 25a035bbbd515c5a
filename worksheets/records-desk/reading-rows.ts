import type { Batch } from '@larderwright/calc/batch';
import type { Cell } from '@larderwright/calc/exchange';
import { type CheckedReading, checkLog, hottestMediumC } from '@larderwright/calc/probe-log';
import { wallOf } from '../parts/clock-text.ts';
import { logName } from '../readings/edits.ts';

const HEADINGS = [
  ...['Probe', 'Date', 'Time', 'With zone', 'Shown, as typed', 'Scale'],
  ...['Core °C, offset taken off', 'Counts', 'Typed in at', 'Initials', 'Left out because'],
];

function counts({ state, doubt }: CheckedReading): string {
  switch (state) {
    case 'counts':
      return 'yes';
    case 'cannot-be':
      return `cannot be: ${doubt ?? ''}`;
    case 'unreadable':
      return 'cannot be read';
    case 'excluded':
      return 'left out by a person';
  }
}

/** Every reading of every probe as rows of a table, under headings, in the order of time. */
export function readingRows(batch: Batch): Cell[][] {
  const top = hottestMediumC(batch.process.steps);
  const rows = batch.process.logs.flatMap((log, index) => {
    const typed = new Map(log.readings.map((reading) => [reading.id, reading] as const));
    return checkLog(log, top).readings.map((checked): Cell[] => {
      const reading = typed.get(checked.id);
      const wall = wallOf(checked.at);
      return [
        logName(log, index),
        wall?.date ?? '',
        wall?.clock ?? '',
        checked.at,
        checked.shown,
        `°${checked.unit}`,
        checked.tempC,
        counts(checked),
        reading?.enteredAt ?? '',
        reading?.initials ?? '',
        checked.exclusion?.reason ?? '',
      ];
    });
  });
  return [HEADINGS, ...rows];
}
