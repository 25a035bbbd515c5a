import * as say from '#words/batch-sheet/verdict-summary.ts';
import { Computed } from '../parts/computed.tsx';
import { FindingList } from '../parts/finding-list.tsx';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { useShared } from '../state/use-shared.ts';
import { $sheet } from './computed.ts';

/** Every limit judged, then every finding, the heaviest first. */
export function VerdictSummary() {
  return (
    <Computed of={useShared($sheet)}>
      {({ assessment }) => {
        const weighty = assessment.findings.filter((finding) => finding.severity !== 'note');
        const notes = assessment.findings.filter((finding) => finding.severity === 'note');
        return (
          <>
            <div class="verdicts">
              {assessment.verdicts.map((verdict, index) => (
                <VerdictLine key={`${verdict.id}-${index}`} verdict={verdict} />
              ))}
            </div>
            <FindingList findings={weighty} />
            {notes.length > 0 ? (
              <details class="worked">
                <summary>{say.noteSOnQualityAndRecord(notes.length)}</summary>
                <FindingList findings={notes} />
              </details>
            ) : null}
          </>
        );
      }}
    </Computed>
  );
}
