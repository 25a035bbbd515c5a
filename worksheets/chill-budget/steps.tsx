import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/chill-budget/steps.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { Needed } from '../parts/needed.tsx';
import { gramsText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { chillBudgetFigureNames, chillBudgetWorkings } from '../words/chill-budget.ts';
import { $chillBudget } from './computed.ts';
import { chillFieldName, passName } from './names.ts';
import { riseText, tempText } from './temp-text.ts';

/** How warm the mix is once brought together, and after every pass. */
export function Steps() {
  return (
    <Computed of={useShared($chillBudget)}>
      {({ slice, values, missing }) => (
        <>
          <Needed
            missing={missing}
            figures={chillBudgetFigureNames}
            nameOf={(path) => chillFieldName(path, slice)}
          />
          <div class="answers">
            <Answer
              label={say.theMixEndsAt}
              value={values.endC === null ? null : tempText(values.endC, 'up')}
              missing={say.cannotTellWeightTemperature}
              worked={
                <>
                  <p>{chillBudgetWorkings.endC}</p>
                  <p>
                    {say.workOfAPass(chillBudgetWorkings.work)}{' '}
                    {values.workJ === null ? null : say.hereKjInAll(fixedText(values.workJ / 1000, 0))}
                  </p>
                  <p>
                    {say.sources} {chillBudgetWorkings.fat}
                  </p>
                </>
              }
            >
              {values.endOtherFatC === null ? null : (
                <p>
                  {say.meltingFatTruthLiesAbout(
                    slice.fatHeat === 'with-melting' ? say.leftOut : say.counted,
                    tempText(values.endOtherFatC, 'up'),
                  )}
                </p>
              )}
            </Answer>
            <Answer
              label={say.warmestThisMixMayEnd}
              value={values.limitC === null ? null : tempText(values.limitC, 'down')}
              missing={say.cannotTellTypeChooseFamily}
              worked={<p>{say.typedFamilyFormulaCommon}</p>}
            />
          </div>
          {values.endC === null ? null : (
            <FigureTable
              caption={say.stepByStep}
              columns={[say.step, say.mix, say.warmerBy, say.iceInTheMeat, say.addedIceLeft]}
              rows={values.steps.map((step) => {
                const place = slice.passes.findIndex(({ id }) => id === step.passId);
                const pass = slice.passes[place];
                return {
                  key: step.passId ?? 'start',
                  head: pass ? passName(pass, place) : say.broughtTogether,
                  cells: [
                    step.tempC === null ? '–' : tempText(step.tempC, 'up'),
                    step.riseC === null ? '–' : riseText(step.riseC),
                    step.iceInMeatG === null ? '–' : gramsText(step.iceInMeatG),
                    step.addedIceLeftG === null ? '–' : gramsText(step.addedIceLeftG),
                  ],
                };
              })}
            />
          )}
        </>
      )}
    </Computed>
  );
}
