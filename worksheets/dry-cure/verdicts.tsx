import * as say from '#words/dry-cure/verdicts.ts';
import { Computed } from '../parts/computed.tsx';
import { FindingList } from '../parts/finding-list.tsx';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { useShared } from '../state/use-shared.ts';
import { ResidualFields } from '../whole-muscle/residual-fields.tsx';
import { $dryCure } from './computed.ts';
import { OWN_FIELDS } from './cure-fields.tsx';

/** Every limit judged for every piece, and what else there is to say. */
export function Verdicts() {
  return (
    <Computed of={useShared($dryCure)}>
      {({ verdicts, findings }) => (
        <>
          <div aria-live="polite">
            {verdicts.length === 0 ? <p class="not-yet">{say.cannotTellThereIsNoPiece}</p> : null}
            {verdicts.map((verdict) => (
              <VerdictLine key={`${verdict.id}-${verdict.subjectId}-${verdict.basis}`} verdict={verdict} />
            ))}
          </div>
          <ResidualFields findings={findings} />
          <FindingList
            findings={findings.filter(
              ({ field = '' }) => !OWN_FIELDS.includes(field) && !field.startsWith('dryCure.pieces.'),
            )}
          />
        </>
      )}
    </Computed>
  );
}
