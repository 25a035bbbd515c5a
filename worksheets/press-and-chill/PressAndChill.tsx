import * as say from '#words/press-and-chill/PressAndChill.ts';
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
  ['press', say.press],
  ['rule', say.rule],
  ['chill', say.chill],
  ['readings', say.readings],
  ['clocks', CLOCKS_TITLE],
  ['legs', say.legs],
  ['deviation', say.deviation],
] as const;

const CHILL = ['chill'] as const;

/** Press and chill log: the weight on the board, the cooling judged leg by leg, and what was decided. */
export default function PressAndChill({ links }: { links: SiteLinks }) {
  return (
    <WorksheetFrame links={links}>
      <Places places={PLACES} />
      <section aria-labelledby="press">
        <h2 id="press">{say.press}</h2>
        <PressFields />
      </section>
      <section aria-labelledby="rule">
        <h2 id="rule">{say.theCoolingRule}</h2>
        <CoolRuleFields />
        <Cured />
      </section>
      <section aria-labelledby="chill">
        <h2 id="chill">{say.howItIsChilled}</h2>
        <ChillSteps />
      </section>
      <Readings />
      <section aria-labelledby="clocks" class="no-print">
        <h2 id="clocks">{CLOCKS_TITLE}</h2>
        <ClockPanel kinds={CHILL} meanwhile={<NotYet what={NO_CLOCK} />} />
      </section>
      <section aria-labelledby="legs">
        <h2 id="legs">{say.legByLeg}</h2>
        <Legs meanwhile={<NotYet what={say.cannotTellNothingOnTheBench} />} />
      </section>
      <section aria-labelledby="across">
        <h2 id="across">{say.byEveryRuleSet}</h2>
        <AcrossRuleSets meanwhile={<NotYet what={say.cannotTellNothingOnTheBench} />} />
      </section>
      <section aria-labelledby="deviation">
        <h2 id="deviation">{say.deviationAndCorrectiveAction}</h2>
        <DeviationFields />
      </section>
      <section aria-labelledby="growth">
        <h2 id="growth">{say.growthForInformation}</h2>
        <p class="say">{say.publishedModelsFoodsMeasured}</p>
        <GrowthInCooling meanwhile={<NotYet />} />
        <h3>{say.keptCold}</h3>
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
      meanwhile={<p class="say">{say.whatHappenedDecisionAbout}</p>}
    />
  );
}

function Readings() {
  const written = useWrittenLog();
  const findings = useChillFindings();
  return (
    <section aria-labelledby="readings">
      <h2 id="readings">{say.readings}</h2>
      <Stand meanwhile={<NotYet what={say.notYetComputedNoReadingNo} />} />
      <LogChoice written={written} />
      <QuickEntry logId={written.id} logName={written.logs.length > 1 ? written.name : null} />
      <LogBook written={written} meanwhile={<PencilRows />} />
      <ImportLog logId={written.id} logName={written.name} meanwhile={null} />
      <details class="probes-fold">
        <summary>{say.probesTheirErrorsAndMoulds}</summary>
        <ProbeList findings={findings} />
      </details>
    </section>
  );
}
