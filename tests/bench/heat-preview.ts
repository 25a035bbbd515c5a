/**
 * How far the preview tier lies from the exact one over random batches of every shape: the core while
 * cooking, the middle while chilling, and the stage ends. Run with Node: `node tests/bench/heat-preview.ts [batches]`.
 */
import { type HeatRun, simulate } from '@larderwright/calc/heat';
import { valueAt } from '../calc/heat/curve.ts';
import { printTable } from '../calc/heat/print.ts';
import { KINDS, median, randomProcess, seeded, timed } from './heat-batches.ts';

const batches = Number(process.argv[2] ?? 200);
const random = seeded(20_261_125);

interface Found {
  readonly kind: string;
  readonly what: string;
  readonly cookC: number;
  readonly chillC: number;
  readonly cookMin: number;
  readonly endMin: number;
  readonly lengthMin: number;
  readonly exactMs: number;
  readonly previewMs: number;
}

/** Largest difference of a curve over a span of both runs, each counted from its own start of the span. */
function apart(
  a: HeatRun,
  b: HeatRun,
  curve: 'coreC' | 'centreC',
  from: readonly [number, number],
  lengthMin: number,
): number {
  let most = 0;
  for (let minute = 2; minute < lengthMin; minute += 2) {
    const gap =
      valueAt(a.timesMin, a[curve], from[0] + minute) - valueAt(b.timesMin, b[curve], from[1] + minute);
    most = Math.max(most, Math.abs(gap));
  }
  return most;
}

const found: Found[] = [];
for (let index = 0; index < batches; index++) {
  const { kind, wall, batch, stages } = randomProcess(index, random);
  const exact = timed(() => simulate(batch, stages));
  const preview = timed(() => simulate(batch, stages, { tier: 'preview' }));
  if (exact.result === null || preview.result === null) throw new Error('a sound problem was refused');
  const [e, p] = [exact.result, preview.result];
  const ends = [e, p].map(
    ({ stages: marks }) => [marks[0]?.timeMin ?? 0, marks.at(-1)?.timeMin ?? 0] as const,
  );
  const [[eCook, eEnd] = [0, 0], [pCook, pEnd] = [0, 0]] = ends;
  found.push({
    kind,
    what: `${wall}, ${stages[0]?.kind}, ${stages.at(-1)?.kind}`,
    cookC: apart(e, p, 'coreC', [0, 0], Math.min(eCook, pCook)),
    chillC: apart(e, p, 'centreC', [eCook, pCook], Math.min(eEnd - eCook, pEnd - pCook)),
    cookMin: pCook - eCook,
    endMin: pEnd - eEnd,
    lengthMin: eEnd,
    exactMs: exact.ms,
    previewMs: preview.ms,
  });
}

const worst = (of: (one: Found) => number, among: readonly Found[]) =>
  among.reduce((most, one) => (Math.abs(of(one)) > Math.abs(most) ? of(one) : most), 0);
const row = (name: string, among: readonly Found[]) => [
  name,
  among.length,
  worst(({ cookC }) => cookC, among).toFixed(2),
  worst(({ chillC }) => chillC, among).toFixed(2),
  worst(({ cookMin }) => cookMin, among).toFixed(2),
  worst(({ endMin }) => endMin, among).toFixed(2),
  `${(100 * worst(({ endMin, lengthMin }) => endMin / lengthMin, among)).toFixed(2)} %`,
  median(among.map(({ exactMs }) => exactMs)).toFixed(0),
  median(among.map(({ previewMs }) => previewMs)).toFixed(0),
];
printTable(
  'Preview against exact, worst of each shape; processor time, median',
  [
    'shape',
    'batches',
    'cook °C',
    'chill °C',
    'cook min',
    'end min',
    'of the whole',
    'exact ms',
    'preview ms',
  ],
  [
    ...KINDS.map((kind) =>
      row(
        kind,
        found.filter((one) => one.kind === kind),
      ),
    ),
    row('all', found),
  ],
);
const outside = found.filter(
  ({ cookC, chillC, cookMin, endMin }) =>
    Math.max(cookC, chillC) > 0.5 || Math.max(Math.abs(cookMin), Math.abs(endMin)) > 2,
);
printTable(
  `Outside 0.5 °C or 2 min: ${outside.length} of ${found.length}`,
  ['shape', 'what', 'cook °C', 'chill °C', 'cook min', 'end min', 'whole min'],
  outside.map(({ kind, what, cookC, chillC, cookMin, endMin, lengthMin }) => [
    kind,
    what,
    ...[cookC, chillC, cookMin, endMin, lengthMin].map((value) => value.toFixed(2)),
  ]),
);
