import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/chill-budget/ice-answers.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { percentText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { chillBudgetWorkings } from '../words/chill-budget.ts';
import { $chillBudget } from './computed.ts';
import { tempText } from './temp-text.ts';

/** Ice to add, or the chill to begin with. */
export function IceAnswers() {
  return (
    <Computed of={useShared($chillBudget)}>
      {({ values: { iceNeededG, iceNeededFraction, preChillC, endC } }) => (
        <div class="answers">
          <Answer
            label={say.iceStillToAdd}
            value={
              iceNeededG === null
                ? null
                : iceNeededG === 0
                  ? say.noneItEndsColdEnough
                  : `${fixedText(iceNeededG, 0, 'up')} g${iceNeededFraction === null ? '' : say.ofTheMix(percentText(iceNeededFraction, 1))}`
            }
            missing={say.cannotTellInputMissingIce}
            worked={<p>{say.roundedUpDerivedBalanceOfHeat(chillBudgetWorkings.ice)}</p>}
          >
            {iceNeededG ? <p>{say.addedWaterWriteIntoFormula}</p> : null}
          </Answer>
          <Answer
            label={say.orBeginWithAllMeatAnd}
            value={preChillC === null ? null : say.orBelow(tempText(preChillC, 'down'))}
            missing={endC === null ? say.cannotTellAnInputIsMissing : say.cannotTellNoStartAbove39}
            worked={<p>{say.roundedDownDerivedBalanceHeat(chillBudgetWorkings.preChill)}</p>}
          />
        </div>
      )}
    </Computed>
  );
}
