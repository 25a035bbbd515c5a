import * as say from '#words/chill-budget/margins.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { chillBudgetWorkings } from '../words/chill-budget.ts';
import { $chillBudget } from './computed.ts';
import { minutesText } from './temp-text.ts';

const WORKED = <p>{say.roundedDownDerivedFilmRoomAir(chillBudgetWorkings.margin)}</p>;

/** Minutes in the room before it is too warm, at the start and at the end. Quality of the bind only. */
export function Margins() {
  return (
    <Computed of={useShared($chillBudget)}>
      {({ values: { marginBeforeMin, marginAfterMin } }) => (
        <>
          <div class="answers">
            <Answer
              label={say.meatMayLieRoomBeforeGrinding}
              value={marginBeforeMin === null ? null : minutesText(marginBeforeMin)}
              worked={WORKED}
            />
            <Answer
              label={say.theFinishedMixMayLieIn}
              value={marginAfterMin === null ? null : minutesText(marginAfterMin)}
              worked={WORKED}
            />
          </div>
          <p class="say">{say.bindFoodSafetyMayGiveLess}</p>
        </>
      )}
    </Computed>
  );
}
