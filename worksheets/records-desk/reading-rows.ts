import type { Batch } from '@larderwright/calc/batch';
import type { Cell } from '@larderwright/calc/exchange';
import { type CheckedReading, checkLog, hottestMediumC } from '@larderwright/calc/probe-log';
import * as say from '#words/records-desk/reading-rows.ts';
import { wallOf } from '../parts/clock-text.ts';
import { logName } from '../readings/edits.ts';

const HEADINGS = [
  ...[say.probe, say.date, say.time, say.withZone, say.shownAsTyped, say.scale],
  ...[say.coreCOffsetTakenOff, say.counts, say.typedInAt, say.initials, say.leftOutBecause],
];

function counts({ state, doubt }: CheckedReading): string {
  switch (state) {
    case 'counts':
      return say.yes;
    case 'cannot-be':
      return say.cannotBe(doubt ?? '');
    case 'unreadable':
      return say.cannotBeRead;
    case 'excluded':
      return say.leftOutByAPerson;
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
