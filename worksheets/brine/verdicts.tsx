import * as say from '#words/brine/verdicts.ts';
import { Computed } from '../parts/computed.tsx';
import { FindingList } from '../parts/finding-list.tsx';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { useShared } from '../state/use-shared.ts';
import { ownMuscleFields } from '../whole-muscle/pack-and-people.tsx';
import { ResidualFields } from '../whole-muscle/residual-fields.tsx';
import { ownFields } from './brine-fields.tsx';
import { $brine } from './computed.ts';

/** Every limit judged, and what else there is to say. */
export function Verdicts() {
  return (
    <Computed of={useShared($brine)}>
      {({ verdicts, findings, slice }) => {
        const own = [...ownMuscleFields('brine'), ...ownFields(slice.method)];
        return (
          <>
            <div aria-live="polite">
              {verdicts.length === 0 ? <p class="not-yet">{say.cannotTellChooseWayBrine}</p> : null}
              {verdicts.map((verdict, index) => (
                <VerdictLine key={`${verdict.id}-${index}`} verdict={verdict} />
              ))}
            </div>
            <ResidualFields findings={findings} />
            <FindingList findings={findings.filter(({ field = '' }) => !own.includes(field))} />
          </>
        );
      }}
    </Computed>
  );
}
