import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { PencilRows } from '../readings/pencil-rows.tsx';
import { Places } from '../readings/places.tsx';
import { QuickEntry } from '../readings/quick-entry.tsx';
import { StepList } from '../readings/step-list.tsx';
import { LogChoice, useWrittenLog } from '../readings/written-log.tsx';
import { CLOCKS_TITLE, NO_CLOCK } from '../words/clock-names.ts';
import { PressFields, useChillFindings } from './press-fields.tsx';
import { CoolRuleFields } from './rule-fields.tsx';

const Cured = later(() => import('./cured.tsx').then((m) => m.Cured));
const Stand = later(() => import('./chill-stand.tsx').then((m) => m.ChillStandPanel));
const LogBook = later(() => import('./log-book.tsx').then((m) => m.LogBook));
const ImportLog = later(() => import('../readings/import-log.tsx').then((m) => m.ImportLog));
const ProbeList = later(() => import('../readings/probe-list.tsx').then((m) => m.ProbeList));
const Deviations = later(() => import('../deviations/deviations.tsx').then((m) => m.Deviations));
const AcrossRuleSets = later(() => import('./across.tsx').then((m) => m.AcrossRuleSets));
const GrowthInCooling = later(() => import('./growth.tsx').then((m) => m.GrowthInCooling));
const Storage = later(() => import('./storage.tsx').then((m) => m.Storage));
const Legs = later(() => import('./legs.tsx').then((m) => m.Legs));

const ClockPanel = later(() => import('../clocks/clock-panel.tsx').then((m) => m.ClockPanel));

const PLACES = [
  ['press', 'Press'],
  ['rule', 'Rule'],
  ['chill', 'Chill'],
  ['readings', 'Readings'],
  ['clocks', CLOCKS_TITLE],
  ['legs', 'Legs'],
  ['deviation', 'Deviation'],
] as const;

const CHILL = ['chill'] as const;

/** Press and chill log: the weight on the board, the cooling judged leg by leg, and what was decided. */
export default function PressAndChill({ links }: { links: SiteLinks }) {
  return (
    <WorksheetFrame links={links}>
      <Places places={PLACES} />
      <section aria-labelledby="press">
        <h2 id="press">Press</h2>
        <PressFields />
      </section>
      <section aria-labelledby="rule">
        <h2 id="rule">The cooling rule</h2>
        <CoolRuleFields />
        <Cured />
      </section>
      <section aria-labelledby="chill">
        <h2 id="chill">How it is chilled</h2>
        <ChillSteps />
      </section>
      <Readings />
      <section aria-labelledby="clocks" class="no-print">
        <h2 id="clocks">{CLOCKS_TITLE}</h2>
        <ClockPanel kinds={CHILL} meanwhile={<NotYet what={NO_CLOCK} />} />
      </section>
      <section aria-labelledby="legs">
        <h2 id="legs">Leg by leg</h2>
        <Legs meanwhile={<NotYet what="CANNOT TELL: nothing on the bench yet" />} />
      </section>
      <section aria-labelledby="across">
        <h2 id="across">By every rule set</h2>
        <AcrossRuleSets meanwhile={<NotYet what="CANNOT TELL: nothing on the bench yet" />} />
      </section>
      <section aria-labelledby="deviation">
        <h2 id="deviation">Deviation and corrective action</h2>
        <DeviationFields />
      </section>
      <section aria-labelledby="growth">
        <h2 id="growth">Growth, for information</h2>
        <p class="say">
          By published models, for the foods they were measured in. It turns no fail into a pass and no pass
          into a fail.
        </p>
        <GrowthInCooling meanwhile={<NotYet />} />
        <h3>Kept cold</h3>
        <Storage />
      </section>
    </WorksheetFrame>
  );
}

function ChillSteps() {
  return <StepList firstKind="chill" kinds={CHILL} findings={useChillFindings()} />;
}

function DeviationFields() {
  return (
    <Deviations
      findings={useChillFindings()}
      meanwhile={
        <p class="say">What happened · decision about the product · cause · prevention · by whom, when.</p>
      }
    />
  );
}

function Readings() {
  const written = useWrittenLog();
  const findings = useChillFindings();
  return (
    <section aria-labelledby="readings">
      <h2 id="readings">Readings</h2>
      <Stand meanwhile={<NotYet what="Not yet computed: no reading, no verdict" />} />
      <LogChoice written={written} />
      <QuickEntry logId={written.id} logName={written.logs.length > 1 ? written.name : null} />
      <LogBook written={written} meanwhile={<PencilRows />} />
      <ImportLog logId={written.id} logName={written.name} meanwhile={null} />
      <details class="probes-fold">
        <summary>Probes, their errors and moulds</summary>
        <ProbeList findings={findings} />
      </details>
    </section>
  );
}
