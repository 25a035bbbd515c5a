import { type ControlChart, controlChart, LEAST_BATCHES } from '@larderwright/calc/trends';
import { useMemo, useState } from 'preact/hooks';
import * as say from '#words/compare/trend.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import type { Shelved } from '../state/database.ts';
import { COMPARE_WORDS, CONTROL_WORDS, SIGNAL_WORDS } from '../words/compare.ts';
import { MOST_IN_TREND } from './compare-store.ts';
import { ControlPicture } from './control-picture.tsx';
import type { CompareFigures } from './figures-of.ts';
import { Ovens } from './ovens.tsx';
import { ReadingLine } from './reading-line.tsx';
import { TREND_KINDS, type TrendKind } from './trend-kinds.ts';
import { useFigures } from './use-figures.ts';

const KINDS = TREND_KINDS.map(({ id, label }) => ({ value: id, label }));

/** One figure from batch to batch, oldest first, with what its control limits say. */
export function Trend({ batches }: { batches: readonly Shelved[] }) {
  const [kindId, setKind] = useState(KINDS[0]?.value ?? '');
  const latest = batches.slice(0, MOST_IN_TREND).toReversed();
  const figures = useFigures(latest);
  const kind = TREND_KINDS.find(({ id }) => id === kindId);
  if (batches.length === 0 || !kind)
    return (
      <>
        <p class="not-yet">{COMPARE_WORDS.nothingKept}</p>
        <Ovens figures={[]} />
      </>
    );
  const ready = figures.state === 'ready' ? figures.figures : [];
  return (
    <>
      <div class="fields">
        <ChoiceField label={say.figure} value={kindId} choices={KINDS} onChoose={setKind} />
      </div>
      <p class="say">{COMPARE_WORDS.ofFamily(latest.length, batches.length)}</p>
      <ReadingLine figures={figures} />
      {figures.state === 'ready' ? <OneTrend kind={kind} figures={ready} /> : null}
      <Ovens figures={ready} />
    </>
  );
}

function OneTrend({ kind, figures }: { kind: TrendKind; figures: readonly CompareFigures[] }) {
  const chart = useMemo(() => controlChart(figures.map(kind.value)), [kind, figures]);
  const drawn = kind.isCount ? { ...chart, limits: null } : chart;
  return (
    <>
      <section class="scroll" tabindex={0} aria-label={CONTROL_WORDS.picture}>
        <ControlPicture chart={drawn} kind={kind} figures={figures} />
      </section>
      <Said chart={chart} kind={kind} />
      <TrendTable chart={drawn} kind={kind} figures={figures} isCount={kind.isCount === true} />
    </>
  );
}

function Said({ chart: { limits, recorded, points }, kind }: { chart: ControlChart; kind: TrendKind }) {
  if (recorded === 0) return <p>{CONTROL_WORDS.none}</p>;
  if (kind.isCount) return <p>{CONTROL_WORDS.count}</p>;
  if (!limits)
    return (
      <p>
        {points.filter(({ range }) => range !== null).length >= LEAST_BATCHES - 1 && recorded >= LEAST_BATCHES
          ? CONTROL_WORDS.same
          : CONTROL_WORDS.tooFew(recorded, LEAST_BATCHES)}
      </p>
    );
  const loud = points.some(({ signals, jump }) => jump || signals.length > 0);
  const { text } = kind;
  return (
    <>
      <p class="control-limits">
        {say.meanControlLimitsMeanStepMost(
          text(limits.mean),
          kind.unit,
          text(limits.lower),
          text(limits.upper),
          text(limits.meanRange),
          text(limits.rangeUpper),
          limits.isTrial ? CONTROL_WORDS.trial(recorded) : null,
        )}{' '}
        {loud ? null : CONTROL_WORDS.quiet}
      </p>
      <p class="control-caution">
        <strong>{CONTROL_WORDS.notSafety}</strong>
      </p>
      <p class="say">{CONTROL_WORDS.how}</p>
    </>
  );
}

interface TableProps {
  chart: ControlChart;
  kind: TrendKind;
  figures: readonly CompareFigures[];
  isCount: boolean;
}

/** Every point of the picture as a row: also for those who hear the page. */
function TrendTable({ chart, kind, figures, isCount }: TableProps) {
  return (
    <section class="scroll" tabindex={0} aria-label={say.batchByBatch(kind.label)}>
      <table class="compare-table trend-table">
        <caption>{kind.label}</caption>
        <thead>
          <tr>
            <th scope="col">{say.batch}</th>
            <th scope="col">{kind.unit || say.count}</th>
            <th scope="col">{say.step}</th>
            <th scope="col">{say.saidOfIt}</th>
          </tr>
        </thead>
        <tbody>
          {chart.points.map(({ value, range, signals, jump }, at) => {
            const batch = figures[at];
            const said = isCount
              ? []
              : [...signals.map((signal) => SIGNAL_WORDS[signal]), ...(jump ? [CONTROL_WORDS.jump] : [])];
            return (
              <tr key={batch?.id ?? at} data-said={said.length > 0 ? 'yes' : undefined}>
                <th scope="row">{[batch?.batchNo || say.noNumber, batch?.day].join(' · ')}</th>
                <td>{value === null ? COMPARE_WORDS.notRecorded : kind.text(value)}</td>
                <td>{range === null ? '' : kind.text(range)}</td>
                <td>{said.length > 0 ? <strong>! {said.join('; ')}</strong> : null}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
