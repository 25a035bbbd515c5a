import * as say from '#words/salt-and-cure/SaltAndCure.ts';
import { BlankForm } from '../parts/blank-form.tsx';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { PeopleFields, RuleFields, SaltTargetField } from './cure-fields.tsx';

const RuleSetLimits = later(() => import('./rule-set-limits.tsx').then((m) => m.RuleSetLimits));
const CuringSalts = later(() => import('./curing-salts.tsx').then((m) => m.CuringSalts));
const NitriteFigures = later(() => import('./nitrite-figures.tsx').then((m) => m.NitriteFigures));
const Verdicts = later(() => import('./verdicts.tsx').then((m) => m.Verdicts));
const PlainSalt = later(() => import('./plain-salt.tsx').then((m) => m.PlainSalt));

/** Salt and cure: the dose of curing salt, the plain salt left to add, and every limit on nitrite. */
export default function SaltAndCure({ links }: { links: SiteLinks }) {
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="rule-and-scale">
        <h2 id="rule-and-scale">{say.ruleTargetAndScale}</h2>
        <RuleFields />
        <RuleSetLimits />
      </section>
      <section aria-labelledby="curing-salt">
        <h2 id="curing-salt">{say.curingSalt}</h2>
        <CuringSalts
          meanwhile={
            <>
              <NotYet what={say.noCuringSaltOnTheBench} />
              <BlankForm
                caption={say.curingSaltInGramsOnly}
                columns={[say.nitriteByThePack, say.nitrateByThePack, say.lot, say.plannedG, say.onTheScaleG]}
                rows={2}
              />
            </>
          }
        />
      </section>
      <section aria-labelledby="nitrite">
        <h2 id="nitrite">{say.nitriteInTheBatch}</h2>
        <NitriteFigures meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="limits">
        <h2 id="limits">{say.againstTheRule}</h2>
        <Verdicts meanwhile={<NotYet what={say.cannotTellNothingOnTheBench} />} />
      </section>
      <section aria-labelledby="plain-salt">
        <h2 id="plain-salt">{say.plainSalt}</h2>
        <SaltTargetField />
        <PlainSalt meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="two-people">
        <h2 id="two-people">{say.twoPeopleAtTheScale}</h2>
        <p class="say">{say.oneWeighsAnotherReadsScalePack}</p>
        <PeopleFields />
      </section>
    </WorksheetFrame>
  );
}
