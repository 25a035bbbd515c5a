import type { Batch } from '@larderwright/calc/batch';
import type { Finding } from '@larderwright/calc/findings';
import type { CheckedLog } from '@larderwright/calc/probe-log';
import * as say from '#words/readings/reading-notes.ts';
import { tempText } from '../charts/temp-text.ts';
import { dayWords, durationWords, wallOf } from '../parts/clock-text.ts';
import { wordsOf } from '../words/index.ts';

/** What stands beside readings in the table, by reading id. */
export interface ReadingNotes {
  /** The core in °C as it counts, where that is not what was typed. */
  readonly corrected: ReadonlyMap<string, string>;
  /** Late entries and doubts, in words. */
  readonly says: ReadonlyMap<string, readonly string[]>;
}

function lateWords(enteredAt: string | null, lateMin: number | null): string[] {
  const wall = enteredAt === null || lateMin === null ? null : wallOf(enteredAt);
  if (!wall || lateMin === null) return [];
  return [
    say.writtenLateTypedAfterReading(
      dayWords(wall.date),
      wall.clock.slice(0, 5),
      durationWords(lateMin, 'down'),
    ),
  ];
}

/** Collects what is to be said about every reading of a batch. */
export function readingNotes(
  batch: Batch,
  logs: readonly CheckedLog[],
  findings: readonly Finding[],
): ReadingNotes {
  const corrected = new Map<string, string>();
  const says = new Map<string, readonly string[]>();
  const enteredAt = new Map(
    batch.process.logs.flatMap((log) =>
      log.readings.map((reading) => [reading.id, reading.enteredAt] as const),
    ),
  );
  const byReading = Map.groupBy(
    findings.filter(({ field }) => field?.includes('.readings.')),
    ({ field }) => field?.split('.readings.')[1]?.split('.')[0] ?? '',
  );
  for (const { offsetC, readings } of logs) {
    for (const reading of readings) {
      const changed = reading.unit === 'F' || (offsetC !== null && offsetC !== 0);
      if (changed && reading.tempC !== null) corrected.set(reading.id, `${tempText(reading.tempC)} °C`);
      const said = [
        ...lateWords(enteredAt.get(reading.id) ?? null, reading.enteredLateMin),
        ...(byReading.get(reading.id) ?? []).map(({ id, params }) => wordsOf(id, params).title),
      ];
      if (said.length > 0) says.set(reading.id, said);
    }
  }
  return { corrected, says };
}
