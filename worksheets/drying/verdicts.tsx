import * as say from '#words/drying/verdicts.ts';
import { Computed } from '../parts/computed.tsx';
import { FindingList } from '../parts/finding-list.tsx';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { useShared } from '../state/use-shared.ts';
import { $drying } from './computed.ts';
import { OWN_FIELDS } from './lot-fields.tsx';

/** What can be judged, and what else there is to say. The plan's stop stands on top of the page. */
export function Verdicts() {
  return (
    <Computed of={useShared($drying)}>
      {({ verdicts, findings }) => (
        <>
          <div aria-live="polite">
            {verdicts.length === 0 ? <p class="not-yet">{say.cannotTellSayWhatIsDried}</p> : null}
            {verdicts.map((verdict) => (
              <VerdictLine key={verdict.id} verdict={verdict} />
            ))}
          </div>
          <FindingList
            findings={findings.filter(
              ({ id, field = '' }) =>
                id !== 'drying.approved-plan' && field !== 'drying.steps' && !OWN_FIELDS.includes(field),
            )}
          />
        </>
      )}
    </Computed>
  );
}
