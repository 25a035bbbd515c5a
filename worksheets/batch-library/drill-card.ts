import type { Traced } from '@larderwright/calc/batch';
import * as say from '#words/batch-library/drill-card.ts';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { durationWords, wallOf } from '../parts/clock-text.ts';
import type { Shelved } from '../state/database.ts';
import { STATE_WORDS } from '../words/states.ts';

/** A search for a lot as it goes to paper. Times are ISO 8601; `endedAt` null while the clock runs. */
export interface DrillRun {
  readonly lot: string;
  readonly startedAt: string;
  readonly endedAt: string | null;
}

const clock = (iso: string) => {
  const wall = wallOf(iso);
  return wall ? `${wall.date} ${wall.clock.slice(0, 5)}` : iso;
};

/** Minutes and seconds between two moments. */
export function takenWords(startedAt: string, endedAt: string): string {
  const seconds = Math.max(0, Math.round((Date.parse(endedAt) - Date.parse(startedAt)) / 1000));
  return seconds < 60 ? `${seconds} s` : `${durationWords(seconds / 60, 'up')}`;
}

/** Where one batch went, in a line each; what nobody wrote down is said to be unknown. */
export function wentTo({ dispatches }: Shelved): string[] {
  return dispatches.length === 0
    ? [say.notWrittenDownAllMayAnywhere]
    : dispatches.map(({ to, amount, at }) =>
        [to || say.noName, amount || say.amountUnknown, wallOf(at)?.date ?? ''].filter(Boolean).join(', '),
      );
}

const holdsAs = ({ uses, through }: Traced<Shelved>) =>
  [
    ...uses.map(({ name, lot, amount }) => [name, say.lot(lot), amount].filter(Boolean).join(', ')),
    ...(through === null ? [] : [say.throughBatch(through)]),
  ].join('; ');

/** The blocks of the printed drill. Empty rows stay for what is found elsewhere. */
export function drillBlocks(found: readonly Traced<Shelved>[], run: DrillRun | null): CardBlock[] {
  return [
    {
      title: say.whatIsCalledBack,
      rows: [
        [
          { label: say.lot2, value: run?.lot || null, wide: true },
          { label: say.ofWhatFromWhom, wide: true },
          { label: say.drillOrReal },
        ],
        [
          { label: say.clockStarted, value: run ? clock(run.startedAt) : null },
          { label: say.allFound, value: run?.endedAt ? clock(run.endedAt) : null },
          { label: say.timeTaken, value: run?.endedAt ? takenWords(run.startedAt, run.endedAt) : null },
          { label: say.doneBy },
        ],
      ],
    },
    {
      title: say.batchesHoldWhereEachWent,
      table: {
        columns: [say.batch, say.holdsItAs, say.madeOn, say.state, say.whereItWent, say.toldWhenInitials],
        rows: found.map((traced) => {
          const { name, batchNo, day, state } = traced.batch;
          return [
            [batchNo || say.noNumber, name].filter(Boolean).join(' '),
            holdsAs(traced),
            day,
            STATE_WORDS[state],
            wentTo(traced.batch).join('; '),
            null,
          ];
        }),
        blankRows: Math.max(2, 8 - found.length),
      },
    },
    {
      title: say.accountedFor,
      rows: [
        [
          { label: say.made, unit: 'kg' },
          { label: say.foundInStore, unit: 'kg' },
          { label: say.sentOut, unit: 'kg' },
          { label: say.accountedFor, unit: '%' },
          { label: say.checkedBy, wide: true },
        ],
      ],
      lines: [say.onlyBatchesKeptDeviceSearched],
    },
  ];
}
