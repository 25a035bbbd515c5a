import { coldestSpot, type PlanMark, type PlanOutcome } from '@larderwright/calc/cook-plan';
import { atom } from 'nanostores';
import { useId } from 'preact/hooks';
import * as say from '#words/cook-plan/section.ts';
import { COLUMNS, type SectionModel, sectionRows } from '../charts/section-model.ts';
import { SectionPicture, sectionSummary } from '../charts/section-picture.tsx';
import { timeText } from '../charts/time-text.ts';
import { FigureTable } from '../parts/figure-table.tsx';
import { NotYet } from '../parts/not-yet.tsx';
import { useShared } from '../state/use-shared.ts';
import { STAGE_NAMES } from '../words/cook-plan-names.ts';
import { $outcome } from './run.ts';

/** The moment that is looked at, min since the start; null: when the heating ends. */
export const $look = atom<number | null>(null);

/** The picture nearest to a moment, and that moment in words. */
export function sectionAtMoment(outcome: PlanOutcome, lookMin: number | null): SectionModel | null {
  const { pictures, section, marks, prediction } = outcome;
  const at = lookMin ?? prediction.heatEndMin;
  const [first] = pictures;
  if (first === undefined) return null;
  const picture = pictures.reduce(
    (best, each) => (Math.abs(each.timeMin - at) < Math.abs(best.timeMin - at) ? each : best),
    first,
  );
  // Out of the heat the coldest spot is the skin.
  const hot = picture.timeMin <= prediction.heatEndMin + 1e-6;
  return {
    net: section,
    tempC: picture.tempC,
    when: momentWords(picture.timeMin, marks),
    coldestMm: hot && picture.timeMin > 0 ? (coldestSpot(outcome, picture.timeMin)?.heightMm ?? null) : null,
  };
}

function momentWords(timeMin: number, marks: readonly PlanMark[]): string {
  const stage = marks.find(({ endMin }) => timeMin <= endMin + 1e-6) ?? marks.at(-1);
  const name = timeMin === 0 ? say.asItGoesIn : STAGE_NAMES[stage?.kind ?? 'cook'];
  return say.at(timeText({ clock: 'elapsed', offsetMin: 0 }, timeMin * 60_000), name);
}

/** The cut through the middle, to be looked at through the whole process. */
export function SectionView() {
  const { value, stale } = useShared($outcome);
  const look = useShared($look);
  if (value === null) return <NotYet what={say.theCutNotYetComputed} />;
  const model = sectionAtMoment(value, look);
  if (model === null) return <NotYet what={say.theCutNotYetComputed} />;
  return (
    <div data-stale={stale ? 'yes' : undefined}>
      {stale ? <p class="not-yet">{say.staleThePlanHasChanged}</p> : null}
      <Scrubber outcome={value} model={model} />
      <SectionFigure model={model} />
    </div>
  );
}

/** Picture, words and table of one moment. */
export function SectionFigure({ model }: { model: SectionModel }) {
  const rows = sectionRows(model);
  return (
    <figure class="section-figure">
      <SectionPicture model={model} />
      <figcaption>{say.mixAloneLiningWallNotDrawn(sectionSummary(model))}</figcaption>
      <details class="curve-data">
        <summary>{say.theSameAsATable}</summary>
        <FigureTable
          caption={say.temperatureInC(model.when)}
          columns={[say.height, ...COLUMNS.map(([name]) => name)]}
          rows={rows.map(({ heightMm, cells }) => ({
            key: String(heightMm),
            head: `${heightMm.toFixed(0)} mm`,
            cells: cells.map((tempC) => (tempC === null ? '–' : tempC.toFixed(0))),
          }))}
        />
      </details>
    </figure>
  );
}

function Scrubber({ outcome, model }: { outcome: PlanOutcome; model: SectionModel }) {
  const id = useId();
  const { pictures, prediction } = outcome;
  const look = useShared($look) ?? prediction.heatEndMin;
  const index = pictures.reduce(
    (best, { timeMin }, i) =>
      Math.abs(timeMin - look) < Math.abs((pictures[best]?.timeMin ?? 0) - look) ? i : best,
    0,
  );
  return (
    <div class="slider">
      <label for={id}>{say.lookAtTheMoment}</label>
      <input
        id={id}
        type="range"
        min={0}
        max={pictures.length - 1}
        step={1}
        value={index}
        aria-valuetext={sectionSummary(model)}
        onInput={(event) => $look.set(pictures[Number(event.currentTarget.value)]?.timeMin ?? null)}
      />
      <output for={id}>{model.when}</output>
      <p class="buttons">
        <button type="button" onClick={() => $look.set(0)}>
          {say.goesIn}
        </button>
        <button type="button" onClick={() => $look.set(prediction.heatEndMin)}>
          {say.outOfTheHeat}
        </button>
        <button type="button" onClick={() => $look.set(prediction.peak.timeMin)}>
          {say.coreAtItsPeak}
        </button>
      </p>
    </div>
  );
}
