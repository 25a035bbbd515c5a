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
  ['limit', 'Limit'],
  ['steps', 'Steps'],
  ['probes', 'Probes'],
  ['readings', 'Readings'],
  ['clocks', CLOCKS_TITLE],
  ['forecast', 'Forecast'],
  ['verdict', 'Verdict'],
] as const;

/** Cook log: the named limit, the probes, the readings, and whether the limit was held. */
export default function CookLog({ links }: { links: SiteLinks }) {
  return (
    <WorksheetFrame links={links}>
      <Places places={PLACES} />
      <section aria-labelledby="limit">
        <h2 id="limit">The limit</h2>
        <PlanFields />
      </section>
      <section aria-labelledby="steps">
        <h2 id="steps">Steps, in the order of the work</h2>
        <CookSteps />
      </section>
      <section aria-labelledby="probes">
        <h2 id="probes">Probes</h2>
        <CookProbes />
      </section>
      <Readings />
      <section aria-labelledby="clocks" class="no-print">
        <h2 id="clocks">{CLOCKS_TITLE}</h2>
        <ClockPanel kinds={KINDS} meanwhile={<NotYet what={NO_CLOCK} />} />
      </section>
      <section aria-labelledby="forecast">
        <h2 id="forecast">Forecast</h2>
        <Forecast
          meanwhile={
            <p class="say">With a cook plan, every reading forecasts the finish. The probe rules.</p>
          }
        />
      </section>
      <section aria-labelledby="verdict">
        <h2 id="verdict">Verdict</h2>
        <Verdict meanwhile={<NotYet what="CANNOT TELL: nothing on the bench yet" />} />
      </section>
      <section aria-labelledby="beside">
        <h2 id="beside">Beside the verdict</h2>
        <p class="say">For information. None of it turns a fail into a pass.</p>
        <Information meanwhile={<NotYet />} />
      </section>
    </WorksheetFrame>
  );
}

function Readings() {
  const written = useWrittenLog();
  return (
    <section aria-labelledby="readings">
      <h2 id="readings">Readings</h2>
      <StandPanel meanwhile={<NotYet what="Not yet computed: no reading, no verdict" />} />
      <AtPresent meanwhile={null} />
      <LogChoice written={written} />
      <QuickEntry logId={written.id} logName={written.logs.length > 1 ? written.name : null} />
      <LogBook written={written} meanwhile={<PencilRows />} />
      <ImportLog logId={written.id} logName={written.name} meanwhile={null} />
    </section>
  );
}
