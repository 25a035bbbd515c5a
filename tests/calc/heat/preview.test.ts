import { type HeatRun, simulate } from '@larderwright/calc/heat';
import { describe, expect, it } from 'vitest';
import { valueAt } from './curve.ts';
import { printTable } from './print.ts';
import { KINDS, type Process, randomProcess, seeded } from './random-batches.ts';

const BATCHES = 207;
/** What a slider may be off, whatever the batch. */
const [MOST_C, MOST_MIN] = [0.5, 2];

interface Found extends Pick<Process, 'kind'> {
  readonly what: string;
  readonly cookC: number;
  readonly chillC: number;
  readonly cookMin: number;
  readonly endMin: number;
}

/** Largest difference of a curve over a span of both runs, each counted from its own start of the span. */
function apart(
  runs: readonly [HeatRun, HeatRun],
  curve: 'coreC' | 'centreC',
  from: readonly [number, number],
  lengthMin: number,
): number {
  const at = (which: 0 | 1, minute: number) =>
    valueAt(runs[which].timesMin, runs[which][curve], from[which] + minute);
  let most = 0;
  for (let minute = 2; minute < lengthMin; minute += 4)
    most = Math.max(most, Math.abs(at(0, minute) - at(1, minute)));
  return most;
}

function compared({ kind, wall, batch, stages }: Process): Found {
  const exact = simulate(batch, stages);
  const preview = simulate(batch, stages, { tier: 'preview' });
  if (exact === null || preview === null) throw new Error('a sound problem was refused');
  const ends = (run: HeatRun) => [run.stages[0]?.timeMin ?? 0, run.stages.at(-1)?.timeMin ?? 0] as const;
  const [[cook, end], [cookThen, endThen]] = [ends(exact), ends(preview)];
  return {
    kind,
    what: `${wall}, ${stages[0]?.kind}, ${stages.at(-1)?.kind}`,
    cookC: apart([exact, preview], 'coreC', [0, 0], Math.min(cook, cookThen)),
    chillC: apart([exact, preview], 'centreC', [cook, cookThen], Math.min(end - cook, endThen - cookThen)),
    cookMin: Math.abs(cookThen - cook),
    endMin: Math.abs(endThen - end),
  };
}

describe('the preview', () => {
  it(`lies within 0.5 °C and 2 min of the exact tier over ${BATCHES} random batches of every shape`, () => {
    const random = seeded(20_261_125);
    const found = Array.from({ length: BATCHES }, (_, index) => compared(randomProcess(index, random)));
    const worst = (of: (one: Found) => number, among = found) =>
      among.reduce<Found | undefined>(
        (most, one) => (most === undefined || of(one) > of(most) ? one : most),
        undefined,
      );
    const measures = [
      ['cook °C', ({ cookC }: Found) => cookC],
      ['chill °C', ({ chillC }: Found) => chillC],
      ['cook min', ({ cookMin }: Found) => cookMin],
      ['end min', ({ endMin }: Found) => endMin],
    ] as const;
    printTable(
      'Preview against exact: the worst of each shape',
      ['shape', 'batches', ...measures.map(([name]) => name)],
      KINDS.map((kind) => {
        const among = found.filter((one) => one.kind === kind);
        const most = measures.map(([, of]) => of(worst(of, among) ?? (found[0] as Found)).toFixed(2));
        return [kind, among.length, ...most];
      }),
    );
    printTable(
      'The worst of all',
      ['measure', 'worst', 'shape', 'batch'],
      measures.map(([name, of]) => {
        const one = worst(of) ?? (found[0] as Found);
        return [name, of(one).toFixed(2), one.kind, one.what];
      }),
    );
    for (const { cookC, chillC, cookMin, endMin } of found) {
      expect(Math.max(cookC, chillC)).toBeLessThan(MOST_C);
      expect(Math.max(cookMin, endMin)).toBeLessThan(MOST_MIN);
    }
  }, 300_000);
});
