import { newDryCureSlice } from '@larderwright/calc/dry-cure';
import * as say from '#words/dry-cure/DryCure.ts';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { CardDesk } from '../parts/print-card.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { provideSlice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { CuringSaltPack, TwoPeople } from '../whole-muscle/pack-and-people.tsx';
import { MuscleRuleFields } from '../whole-muscle/rule-fields.tsx';
import { AddPiece } from './add-piece.tsx';
import { Cards } from './cards.tsx';
import { $dryCure } from './computed.ts';
import { CureFields } from './cure-fields.tsx';

provideSlice('dryCure', newDryCureSlice);

const Limits = later(() => import('../whole-muscle/limit-table.tsx').then((m) => m.MuscleLimits));
const PieceList = later(() => import('./piece-list.tsx').then((m) => m.PieceList));
const Verdicts = later(() => import('./verdicts.tsx').then((m) => m.Verdicts));

/** Dry cure of whole muscle: what goes in each bag, how long it lies, and every limit on it. */
export default function DryCure({ links, standing }: { links: SiteLinks; standing: string }) {
  const computed = useShared($dryCure);
  const findings = computed.state === 'ready' ? computed.value.findings : [];
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="rule-and-scale">
        <h2 id="rule-and-scale">{say.ruleProductAndScale}</h2>
        <MuscleRuleFields slice="dryCure" findings={findings} />
        <Limits slice="dryCure" route="dry" />
      </section>
      <section aria-labelledby="the-cure">
        <h2 id="the-cure">{say.theCure}</h2>
        <CureFields findings={findings} />
      </section>
      <section aria-labelledby="curing-salt">
        <h2 id="curing-salt">{say.curingSalt}</h2>
        <CuringSaltPack slice="dryCure" findings={findings} />
      </section>
      <section aria-labelledby="pieces">
        <h2 id="pieces">{say.piecesEachInABagOf}</h2>
        <PieceList meanwhile={<NotYet what={say.noPieceOnTheBenchYet} />} />
        <AddPiece />
      </section>
      <section aria-labelledby="limits">
        <h2 id="limits">{say.againstTheRule}</h2>
        <Verdicts meanwhile={<NotYet what={say.cannotTellNothingOnTheBench} />} />
      </section>
      <TwoPeople findings={findings} />
      <CardDesk about={say.cardHangEachBagWeightsDays}>
        {(paper) => <Cards paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}
