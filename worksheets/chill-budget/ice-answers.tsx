import { fixedText } from '@larderwright/calc/quantities';
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
            label="Ice still to add"
            value={
              iceNeededG === null
                ? null
                : iceNeededG === 0
                  ? 'None: it ends cold enough'
                  : `${fixedText(iceNeededG, 0, 'up')} g${iceNeededFraction === null ? '' : `, ${percentText(iceNeededFraction, 1)} of the mix`}`
            }
            missing="Cannot tell: an input is missing, or ice cannot melt at that end"
            worked={<p>{chillBudgetWorkings.ice} Rounded up. Derived: balance of heat.</p>}
          >
            {iceNeededG ? <p>It is added water: write it into the formula.</p> : null}
          </Answer>
          <Answer
            label="Or begin with all meat and fat at"
            value={preChillC === null ? null : `${tempText(preChillC, 'down')} or below`}
            missing={
              endC === null
                ? 'Cannot tell: an input is missing'
                : 'Cannot tell: no start above −39 °C (−38 °F) does it, or an input is missing'
            }
            worked={<p>{chillBudgetWorkings.preChill} Rounded down. Derived: balance of heat.</p>}
          />
        </div>
      )}
    </Computed>
  );
}
