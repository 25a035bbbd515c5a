import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { chillBudgetWorkings } from '../words/chill-budget.ts';
import { $chillBudget } from './computed.ts';
import { minutesText } from './temp-text.ts';

const WORKED = (
  <p>
    {chillBudgetWorkings.margin} Rounded down. Derived; the film of room air is a usual range, its quick end
    taken.
  </p>
);

/** Minutes in the room before it is too warm, at the start and at the end. Quality of the bind only. */
export function Margins() {
  return (
    <Computed of={useShared($chillBudget)}>
      {({ values: { marginBeforeMin, marginAfterMin } }) => (
        <>
          <div class="answers">
            <Answer
              label="Meat may lie in the room before grinding"
              value={marginBeforeMin === null ? null : minutesText(marginBeforeMin)}
              worked={WORKED}
            />
            <Answer
              label="The finished mix may lie in the room"
              value={marginAfterMin === null ? null : minutesText(marginAfterMin)}
              worked={WORKED}
            />
          </div>
          <p class="say">
            For the bind. Food safety may give you less: keep to your own rule for food out of the cold.
          </p>
        </>
      )}
    </Computed>
  );
}
