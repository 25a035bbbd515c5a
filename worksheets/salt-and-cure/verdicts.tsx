import * as say from '#words/salt-and-cure/nitrite-figures.ts';
import { Computed } from '../parts/computed.tsx';
import { FindingList } from '../parts/finding-list.tsx';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { useShared } from '../state/use-shared.ts';
import { ResidualFields } from '../whole-muscle/residual-fields.tsx';
import { $cure } from './computed.ts';
import { OWN_FIELDS } from './cure-fields.tsx';

/** Every limit of the chosen rule, judged, and what else there is to say about the batch. */
export function Verdicts() {
  return (
    <Computed of={useShared($cure)}>
      {({ verdicts, findings, isReckonedElsewhere }) => (
        <>
          {isReckonedElsewhere ? <p class="say">{say.reckonedElsewhere}</p> : null}
          <div aria-live="polite">
            {verdicts.map((verdict, index) => (
              <VerdictLine key={`${verdict.id}-${index}`} verdict={verdict} />
            ))}
          </div>
          <ResidualFields findings={findings} />
          <FindingList
            findings={findings.filter(
              ({ field = '' }) => !OWN_FIELDS.includes(field) && !field.startsWith('formula.lines.'),
            )}
          />
        </>
      )}
    </Computed>
  );
}
