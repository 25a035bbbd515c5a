import type { LabelSlice } from '@larderwright/calc/label';
import { fixedText } from '@larderwright/calc/quantities';
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
const exact = (value: number | null) => (value === null ? 'not known' : fixedText(value, 2));

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
          label="Serving"
          kind="mass"
          units={['g', 'oz']}
          hint="United States reference amounts: pâté, sausage and spreads 55 g, dried 30 g, bacon 15 g, ham 85 g. Some from memory: check."
        />
        <ChoiceField
          label="Alcohol in it was"
          value={slice.alcohol ?? ''}
          empty="Nobody has said"
          choices={ALCOHOL_CHOICES}
          onChoose={(value) => editAt('label.alcohol', value || null)}
          hint="United States Department of Agriculture, retention factors, release 6."
        />
      </div>
      {eu === null ? (
        <p class="not-yet">Cannot tell: say what was lost, and weigh the finished food</p>
      ) : (
        <div class="label-tables">
          <div>
            <FigureTable
              caption="European Union and United Kingdom"
              columns={['Nutrient', '100 g', `Serving ${values?.servingG ?? ''} g`]}
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
                    {EU_ROW_NAMES[row.id]}: {exact(row.exact.value)} in 100 g before rounding
                  </li>
                ))}
              </ul>
            </Worked>
          </div>
          {us === null ? (
            <p class="not-yet">Cannot tell the United States panel: the serving is missing</p>
          ) : (
            <div>
              <FigureTable
                caption={`United States, serving ${values?.servingG ?? ''} g`}
                columns={['Nutrient', 'Amount', '% DV 2016', '% DV before']}
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
                      {US_ROW_NAMES[row.id]}: {exact(row.exact.value)} in a serving before rounding
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
          label="Servings in a pack"
          value={
            values?.servings ? `${values.servings.about ? 'about ' : ''}${values.servings.declared}` : null
          }
          missing="Cannot tell: net weight or serving is missing"
          worked={<p>{labelWorkings.servings}</p>}
        />
        <Answer
          label="Added water, as the EU counts it"
          value={
            values && values.addedWaterFraction !== null
              ? `${fixedText(values.addedWaterFraction * 100, 1)} %`
              : null
          }
          missing="Cannot tell: the finished weight is missing"
          worked={<p>{labelWorkings.water}</p>}
        />
      </div>
    </>
  );
}
