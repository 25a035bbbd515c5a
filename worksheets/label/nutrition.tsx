import type { LabelSlice } from '@larderwright/calc/label';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/label/nutrition.ts';
import { Answer } from '../parts/answer.tsx';
import { ChoiceField } from '../parts/choice-field.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { Worked } from '../parts/worked.tsx';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { EU_ROW_NAMES, figureText, labelWorkings, US_ROW_NAMES } from '../words/label.ts';
import { ALCOHOL_CHOICES } from '../words/label-names.ts';
import { $label } from './computed.ts';

const percentDv = (value: number | null) => (value === null ? '' : `${value} %`);
const exact = (value: number | null) => (value === null ? say.notKnown : fixedText(value, 2));

/** Both tables side by side, each with the exact figures behind it. */
export function NutritionTables() {
  const slice = useAt('label') as LabelSlice;
  const computed = useShared($label);
  const values = computed.state === 'ready' ? computed.value.values : null;
  const eu = values?.euTable ?? null;
  const us = values?.usPanel ?? null;
  return (
    <>
      <div class="fields">
        <NumberField
          path="label.serving"
          label={say.serving}
          kind="mass"
          units={['g', 'oz']}
          hint={say.unitedStatesReferenceAmounts}
        />
        <ChoiceField
          label={say.alcoholInItWas}
          value={slice.alcohol ?? ''}
          empty={say.nobodyHasSaid}
          choices={ALCOHOL_CHOICES}
          onChoose={(value) => editAt('label.alcohol', value || null)}
          hint={say.unitedStatesDepartment}
        />
      </div>
      {eu === null ? (
        <p class="not-yet">{say.cannotTellSayWhatLostWeigh}</p>
      ) : (
        <div class="label-tables">
          <div>
            <FigureTable
              caption={say.europeanUnionAndUnitedKingdom}
              columns={[say.nutrient, '100 g', say.servingG(values?.servingG ?? '')]}
              rows={eu.map(({ id, declared }, index) => ({
                key: id,
                head: EU_ROW_NAMES[id],
                cells: [figureText(declared), figureText(values?.euPerServing?.[index]?.declared ?? null)],
              }))}
            />
            <Worked>
              <p>{labelWorkings.eu}</p>
              <ul>
                {eu.map((row) => (
                  <li key={row.id}>
                    {say.in100GBeforeRounding(EU_ROW_NAMES[row.id], exact(row.exact.value))}
                  </li>
                ))}
              </ul>
            </Worked>
          </div>
          {us === null ? (
            <p class="not-yet">{say.cannotTellUnitedStatesPanel}</p>
          ) : (
            <div>
              <FigureTable
                caption={say.unitedStatesServingG(values?.servingG ?? '')}
                columns={[say.nutrient, say.amount, say.dv2016, say.dvBefore]}
                rows={us.map((row) => ({
                  key: row.id,
                  head: US_ROW_NAMES[row.id],
                  cells: [
                    figureText(row.declared),
                    percentDv(row.percentDv2016),
                    percentDv(row.percentDv1993),
                  ],
                }))}
              />
              <Worked>
                <p>{labelWorkings.us}</p>
                <ul>
                  {us.map((row) => (
                    <li key={row.id}>
                      {say.inAServingBeforeRounding(US_ROW_NAMES[row.id], exact(row.exact.value))}
                    </li>
                  ))}
                </ul>
              </Worked>
            </div>
          )}
        </div>
      )}
      <div class="answers">
        <Answer
          label={say.servingsInAPack}
          value={
            values?.servings ? `${values.servings.about ? say.about : ''}${values.servings.declared}` : null
          }
          missing={say.cannotTellNetWeightServing}
          worked={<p>{labelWorkings.servings}</p>}
        />
        <Answer
          label={say.addedWaterAsTheEuCounts}
          value={
            values && values.addedWaterFraction !== null
              ? `${fixedText(values.addedWaterFraction * 100, 1)} %`
              : null
          }
          missing={say.cannotTellFinishedWeight}
          worked={<p>{labelWorkings.water}</p>}
        />
      </div>
    </>
  );
}
