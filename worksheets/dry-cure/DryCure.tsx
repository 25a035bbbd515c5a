import { newDryCureSlice } from '@larderwright/calc/dry-cure';
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
        <h2 id="rule-and-scale">Rule, product and scale</h2>
        <MuscleRuleFields slice="dryCure" findings={findings} />
        <Limits slice="dryCure" route="dry" />
      </section>
      <section aria-labelledby="the-cure">
        <h2 id="the-cure">The cure</h2>
        <CureFields findings={findings} />
      </section>
      <section aria-labelledby="curing-salt">
        <h2 id="curing-salt">Curing salt</h2>
        <CuringSaltPack slice="dryCure" findings={findings} />
      </section>
      <section aria-labelledby="pieces">
        <h2 id="pieces">Pieces, each in a bag of its own</h2>
        <PieceList meanwhile={<NotYet what="No piece on the bench yet" />} />
        <AddPiece />
      </section>
      <section aria-labelledby="limits">
        <h2 id="limits">Against the rule</h2>
        <Verdicts meanwhile={<NotYet what="CANNOT TELL: nothing on the bench yet" />} />
      </section>
      <TwoPeople findings={findings} />
      <CardDesk about="A card to hang on each bag: its weights, the days to turn it, its loss.">
        {(paper) => <Cards paper={paper} standing={standing} />}
      </CardDesk>
    </WorksheetFrame>
  );
}
