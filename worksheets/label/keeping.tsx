import type { LabelSlice } from '@larderwright/calc/label';
import * as say from '#words/label/keeping.ts';
import { Answer } from '../parts/answer.tsx';
import { ChoiceField } from '../parts/choice-field.tsx';
import { DateField } from '../parts/date-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { gramsText } from '../parts/number-text.ts';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { labelWorkings } from '../words/label.ts';
import { choicesOf, HURDLE_NAMES, PACK_NAMES } from '../words/label-names.ts';
import { $label } from './computed.ts';
import { netText, storeLine } from './label-text.ts';

const SEALED: readonly (string | null)[] = ['vacuum', 'modified-air', 'jar'];

/** Pack, cold, life and the date that follows from the cook. */
export function Keeping() {
  const slice = useAt('label') as LabelSlice;
  const computed = useShared($label);
  const ready = computed.state === 'ready' ? computed.value : null;
  const findings = ready?.findings ?? [];
  const of = (field: string) => at(findings, `label.${field}`);
  const verdict = ready?.verdicts.find(({ id }) => id === 'label.use-by');
  const values = ready?.values ?? null;
  const portionG = ready?.sold?.portionG ?? null;
  return (
    <>
      <div class="fields">
        <ChoiceField
          label={say.pack}
          value={slice.pack ?? ''}
          empty={say.notChosen}
          choices={choicesOf(PACK_NAMES)}
          onChoose={(value) => editAt('label.pack', value || null)}
        />
        {SEALED.includes(slice.pack) ? (
          <ChoiceField
            label={say.hurdleAgainstBotulismProven}
            value={slice.hurdle ?? ''}
            empty={say.none}
            choices={choicesOf(HURDLE_NAMES)}
            onChoose={(value) => editAt('label.hurdle', value || null)}
            findings={of('hurdle')}
          />
        ) : null}
        <NumberField
          path="label.storeAt"
          label={say.keepAtOrBelow}
          kind="temperature"
          units={['C', 'F']}
          range={{ min: -40, max: 30 }}
          findings={of('storeAt')}
        />
        <NumberField
          path="label.life"
          label={say.lifeFromTheCook}
          kind="time"
          units={['d']}
          hint={say.setPlanFiveDaysShortPurpose}
          findings={of('life')}
        />
        <ChoiceField
          label={say.theDayOfTheCook}
          value={slice.cookDayCounts ? 'yes' : 'no'}
          choices={[
            { value: 'yes', label: say.countsAsDayOne },
            { value: 'no', label: say.doesNotCount },
          ]}
          onChoose={(value) => editAt('label.cookDayCounts', value === 'yes')}
        />
        <ChoiceField
          label={say.kindOfDate}
          value={slice.dateKind}
          choices={[
            { value: 'use-by', label: say.useBy },
            { value: 'best-before', label: say.bestBefore },
          ]}
          onChoose={(value) => editAt('label.dateKind', value)}
          findings={of('dateKind')}
        />
        <DateField
          path="label.cookedOn"
          label={say.cookedOn}
          hint={say.blankDayFirstCookLog}
          findings={of('cookedOn')}
        />
        <DateField
          path="label.packedOn"
          label={say.packedOn}
          hint={say.itMovesNoDate}
          findings={of('packedOn')}
        />
        <NumberField
          path="label.netWeight"
          label={say.netWeightOfAPack}
          kind="mass"
          units={['g', 'kg', 'oz', 'lb']}
          hint={
            portionG === null
              ? say.withoutWrappingCrustJellyWhere
              : say.portionSlicingWorksheetWeigh(gramsText(portionG))
          }
        />
      </div>
      <div class="answers">
        <Answer
          label={slice.dateKind === 'use-by' ? say.useBy : say.bestBefore}
          value={values?.useBy ?? null}
          missing={say.cannotTellDayCookLifeMissing}
          worked={<p>{labelWorkings.useBy}</p>}
        >
          {values?.useBy ? (
            <p class="buttons">
              <button type="button" onClick={() => editAt('product.useBy', values.useBy ?? '')}>
                {say.writeItOnTheBatchSheet}
              </button>
            </p>
          ) : null}
        </Answer>
        <Answer
          label={say.storageLine}
          value={values && values.storeAtC !== null ? storeLine(slice, values) : null}
          missing={say.cannotTellTemperatureMissing}
          worked={<p>{labelWorkings.storageLine}</p>}
        />
        <Answer
          label={say.netWeightAsPrinted}
          value={values && values.netG !== null ? netText(values.netG, slice.market) : null}
          missing={say.cannotTellWeighPackWithout}
          worked={<p>{labelWorkings.netWeight}</p>}
        />
      </div>
      {verdict ? <VerdictLine verdict={verdict} /> : null}
    </>
  );
}
