import { Computed } from '../parts/computed.tsx';
import { FindingList } from '../parts/finding-list.tsx';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { useShared } from '../state/use-shared.ts';
import { $cook } from './computed.ts';
import { PLAN_FIELDS } from './plan-fields.tsx';

/** Findings that a field or a row of the log shows itself. */
const SHOWN_AT_FIELD = /^process\.(?:steps\.|logs\.[^.]+\.(?:offset|error|readings\.))/;

/** The verdict with its reason and source, and what no field shows. */
export function CookVerdict() {
  return (
    <Computed of={useShared($cook)}>
      {({ verdict, findings }) => (
        <>
          <VerdictLine verdict={verdict} />
          <FindingList
            findings={findings.filter(
              ({ field = '' }) => !PLAN_FIELDS.includes(field) && !SHOWN_AT_FIELD.test(field),
            )}
          />
        </>
      )}
    </Computed>
  );
}
