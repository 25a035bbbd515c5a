import { fixedText } from '@larderwright/calc/quantities';
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

const SOURCES =
  'Heat contents: ASHRAE Handbook, Refrigeration 2006, chapter 9, with its ice below the freezing point, from memory; back fat by USDA SR28. Derived: conservation of energy.';

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
              label="The mix ends at"
              value={values.endC === null ? null : tempText(values.endC, 'up')}
              missing="Cannot tell: a weight, a temperature or a pass is missing"
              worked={
                <>
                  <p>{chillBudgetWorkings.endC}</p>
                  <p>
                    Work of a pass: {chillBudgetWorkings.work}{' '}
                    {values.workJ === null ? null : `Here ${fixedText(values.workJ / 1000, 0)} kJ in all.`}
                  </p>
                  <p>
                    {SOURCES} {chillBudgetWorkings.fat}
                  </p>
                </>
              }
            >
              {values.endOtherFatC === null ? null : (
                <p>
                  With the melting of fat {slice.fatHeat === 'with-melting' ? 'left out' : 'counted'}:{' '}
                  {tempText(values.endOtherFatC, 'up')}. The truth lies about between.
                </p>
              )}
            </Answer>
            <Answer
              label="Warmest this mix may end"
              value={values.limitC === null ? null : tempText(values.limitC, 'down')}
              missing="Cannot tell: type it, or choose the family in the formula"
              worked={<p>As typed, or by the family of the formula: common practice, no source.</p>}
            />
          </div>
          {values.endC === null ? null : (
            <FigureTable
              caption="Step by step"
              columns={['Step', 'Mix', 'Warmer by', 'Ice in the meat', 'Added ice left']}
              rows={values.steps.map((step) => {
                const place = slice.passes.findIndex(({ id }) => id === step.passId);
                const pass = slice.passes[place];
                return {
                  key: step.passId ?? 'start',
                  head: pass ? passName(pass, place) : 'Brought together',
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
