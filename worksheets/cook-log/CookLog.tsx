import * as say from '#words/cook-log/CookLog.ts';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { PencilRows } from '../readings/pencil-rows.tsx';
import { Places } from '../readings/places.tsx';
import { QuickEntry } from '../readings/quick-entry.tsx';
import { LogChoice, useWrittenLog } from '../readings/written-log.tsx';
import { CLOCKS_TITLE, NO_CLOCK } from '../words/clock-names.ts';
import { PlanFields } from './plan-fields.tsx';
import { CookProbes, CookSteps } from './process-fields.tsx';

const StandPanel = later(() => import('./stand.tsx').then((m) => m.StandPanel));
const AtPresent = later(() => import('./present.tsx').then((m) => m.AtPresent));
const LogBook = later(() => import('./log-book.tsx').then((m) => m.LogBook));
const ImportLog = later(() => import('../readings/import-log.tsx').then((m) => m.ImportLog));
const Forecast = later(() => import('./live-forecast.tsx').then((m) => m.Forecast));
const Verdict = later(() => import('./verdict.tsx').then((m) => m.CookVerdict));
const Information = later(() => import('./information.tsx').then((m) => m.Information));

const ClockPanel = later(() => import('../clocks/clock-panel.tsx').then((m) => m.ClockPanel));

/** Stages whose clocks are begun and ended here. */
const KINDS = ['cook', 'smoke', 'reheat'] as const;

const PLACES = [
  ['limit', say.limit],
  ['steps', say.steps],
  ['probes', say.probes],
  ['readings', say.readings],
  ['clocks', CLOCKS_TITLE],
  ['forecast', say.forecast],
  ['verdict', say.verdict],
] as const;

/** Cook log: the named limit, the probes, the readings, and whether the limit was held. */
export default function CookLog({ links }: { links: SiteLinks }) {
  return (
    <WorksheetFrame links={links}>
      <Places places={PLACES} />
      <section aria-labelledby="limit">
        <h2 id="limit">{say.theLimit}</h2>
        <PlanFields />
      </section>
      <section aria-labelledby="steps">
        <h2 id="steps">{say.stepsInTheOrderOfThe}</h2>
        <CookSteps />
      </section>
      <section aria-labelledby="probes">
        <h2 id="probes">{say.probes}</h2>
        <CookProbes />
      </section>
      <Readings />
      <section aria-labelledby="clocks" class="no-print">
        <h2 id="clocks">{CLOCKS_TITLE}</h2>
        <ClockPanel kinds={KINDS} meanwhile={<NotYet what={NO_CLOCK} />} />
      </section>
      <section aria-labelledby="forecast">
        <h2 id="forecast">{say.forecast}</h2>
        <Forecast meanwhile={<p class="say">{say.cookPlanEveryReadingForecasts}</p>} />
      </section>
      <section aria-labelledby="verdict">
        <h2 id="verdict">{say.verdict}</h2>
        <Verdict meanwhile={<NotYet what={say.cannotTellNothingOnTheBench} />} />
      </section>
      <section aria-labelledby="beside">
        <h2 id="beside">{say.besideTheVerdict}</h2>
        <p class="say">{say.informationNoneTurnsFailInto}</p>
        <Information meanwhile={<NotYet />} />
      </section>
    </WorksheetFrame>
  );
}

function Readings() {
  const written = useWrittenLog();
  return (
    <section aria-labelledby="readings">
      <h2 id="readings">{say.readings}</h2>
      <StandPanel meanwhile={<NotYet what={say.notYetComputedNoReadingNo} />} />
      <AtPresent meanwhile={null} />
      <LogChoice written={written} />
      <QuickEntry logId={written.id} logName={written.logs.length > 1 ? written.name : null} />
      <LogBook written={written} meanwhile={<PencilRows />} />
      <ImportLog logId={written.id} logName={written.name} meanwhile={null} />
    </section>
  );
}
