import { type BrineMethod, newBrineSlice } from '@larderwright/calc/brine';
import * as say from '#words/brine/Brine.ts';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { CuringSaltPack, TwoPeople } from '../whole-muscle/pack-and-people.tsx';
import { MuscleRuleFields } from '../whole-muscle/rule-fields.tsx';
import { AdditiveFields, BrineFields, KeepingFields, UptakeFields } from './brine-fields.tsx';
import { Cards } from './cards.tsx';
import { $brine } from './computed.ts';
import { Converter } from './converter.tsx';
import { MeatFields } from './meat-fields.tsx';

provideSlice('brine', newBrineSlice);

const Limits = later(() => import('../whole-muscle/limit-table.tsx').then((m) => m.MuscleLimits));
const Mixing = later(() => import('./mixing.tsx').then((m) => m.Mixing));
const NitriteTable = later(() => import('./nitrite-table.tsx').then((m) => m.NitriteTable));
const Strength = later(() => import('./outcome.tsx').then((m) => m.Strength));
const PumpAnswers = later(() => import('./outcome.tsx').then((m) => m.PumpAnswers));
const Outcome = later(() => import('./outcome.tsx').then((m) => m.Outcome));
const Verdicts = later(() => import('./verdicts.tsx').then((m) => m.Verdicts));

/** Brine and injection: the brine in its order, its strength, nitrite by each counting, and every limit. */
export default function Brine({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($brine);
  const method = useAt('brine.method') as BrineMethod | null;
  const findings = computed.state === 'ready' ? computed.value.findings : [];
  const route = method === 'inject' || method === 'inject-cover' ? 'pumped' : 'immersion';
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="rule-and-scale">
        <h2 id="rule-and-scale">{say.ruleProductAndScale}</h2>
        <MuscleRuleFields slice="brine" findings={findings} />
        <Limits slice="brine" route={route} />
      </section>
      <section aria-labelledby="the-meat">
        <h2 id="the-meat">{say.theMeatAndTheWay}</h2>
        <MeatFields findings={findings} />
      </section>
      <section aria-labelledby="the-brine">
        <h2 id="the-brine">{say.theBrine}</h2>
        <BrineFields findings={findings} />
        <AdditiveFields findings={findings} />
        <h3>{say.injectedAndTakenUp}</h3>
        <UptakeFields findings={findings} />
        <PumpAnswers />
        <h3>{say.itsAgeAndItsCold}</h3>
        <KeepingFields findings={findings} />
      </section>
      <section aria-labelledby="curing-salt">
        <h2 id="curing-salt">{say.curingSalt}</h2>
        <CuringSaltPack slice="brine" findings={findings} />
      </section>
      <section aria-labelledby="mixing">
        <h2 id="mixing">{say.mixItColdInThisOrder}</h2>
        <p class="say">{say.phosphateWillNotDissolveSalt}</p>
        <Mixing meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="strength">
        <h2 id="strength">{say.strengthInEveryScale}</h2>
        <Strength meanwhile={<NotYet />} />
        <h3>{say.turnOneScaleIntoAnother}</h3>
        <Converter />
      </section>
      <section aria-labelledby="nitrite">
        <h2 id="nitrite">{say.nitriteByEachCounting}</h2>
        <NitriteTable meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="outcome">
        <h2 id="outcome">{say.whenMeatAndBrineAreEven}</h2>
        <Outcome meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="limits">
        <h2 id="limits">{say.againstTheRule}</h2>
        <Verdicts meanwhile={<NotYet what={say.cannotTellNothingOnTheBench} />} />
      </section>
      <TwoPeople findings={findings} />
      <CardDesk about={say.cardVatMixingOrderNeedles}>
        {(paper) => <Cards paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}
