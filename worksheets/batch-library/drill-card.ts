import type { Traced } from '@larderwright/calc/batch';
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
    ? ['not written down: all of it may be anywhere']
    : dispatches.map(({ to, amount, at }) =>
        [to || 'no name', amount || 'amount unknown', wallOf(at)?.date ?? ''].filter(Boolean).join(', '),
      );
}

const holdsAs = ({ uses, through }: Traced<Shelved>) =>
  [
    ...uses.map(({ name, lot, amount }) => [name, `lot ${lot}`, amount].filter(Boolean).join(', ')),
    ...(through === null ? [] : [`through batch ${through}`]),
  ].join('; ');

/** The blocks of the printed drill. Empty rows stay for what is found elsewhere. */
export function drillBlocks(found: readonly Traced<Shelved>[], run: DrillRun | null): CardBlock[] {
  return [
    {
      title: 'What is called back',
      rows: [
        [
          { label: 'Lot', value: run?.lot || null, wide: true },
          { label: 'Of what, from whom', wide: true },
          { label: 'Drill or real' },
        ],
        [
          { label: 'Clock started', value: run ? clock(run.startedAt) : null },
          { label: 'All found', value: run?.endedAt ? clock(run.endedAt) : null },
          { label: 'Time taken', value: run?.endedAt ? takenWords(run.startedAt, run.endedAt) : null },
          { label: 'Done by' },
        ],
      ],
    },
    {
      title: 'Batches that hold it, and where each went',
      table: {
        columns: ['Batch', 'Holds it as', 'Made on', 'State', 'Where it went', 'Told, when, initials'],
        rows: found.map((traced) => {
          const { name, batchNo, day, state } = traced.batch;
          return [
            [batchNo || 'no number', name].filter(Boolean).join(' '),
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
      title: 'Accounted for',
      rows: [
        [
          { label: 'Made', unit: 'kg' },
          { label: 'Found in store', unit: 'kg' },
          { label: 'Sent out', unit: 'kg' },
          { label: 'Accounted for', unit: '%' },
          { label: 'Checked by', wide: true },
        ],
      ],
      lines: [
        'Only batches kept on this device were searched. Ask the other devices and the paper file too.',
      ],
    },
  ];
}
