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
        <h2 id="rule-and-scale">Rule, target and scale</h2>
        <RuleFields />
        <RuleSetLimits />
      </section>
      <section aria-labelledby="curing-salt">
        <h2 id="curing-salt">Curing salt</h2>
        <CuringSalts
          meanwhile={
            <>
              <NotYet what="No curing salt on the bench yet" />
              <BlankForm
                caption="Curing salt, in grams only"
                columns={[
                  'Nitrite by the pack, %',
                  'Nitrate by the pack, %',
                  'Lot',
                  'Planned, g',
                  'On the scale, g',
                ]}
                rows={2}
              />
            </>
          }
        />
      </section>
      <section aria-labelledby="nitrite">
        <h2 id="nitrite">Nitrite in the batch</h2>
        <NitriteFigures meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="limits">
        <h2 id="limits">Against the rule</h2>
        <Verdicts meanwhile={<NotYet what="CANNOT TELL: nothing on the bench yet" />} />
      </section>
      <section aria-labelledby="plain-salt">
        <h2 id="plain-salt">Plain salt</h2>
        <SaltTargetField />
        <PlainSalt meanwhile={<NotYet />} />
      </section>
      <section aria-labelledby="two-people">
        <h2 id="two-people">Two people at the scale</h2>
        <p class="say">One weighs, another reads the scale and the pack before it goes in.</p>
        <PeopleFields />
      </section>
    </WorksheetFrame>
  );
}
