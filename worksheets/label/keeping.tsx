import type { LabelSlice } from '@larderwright/calc/label';
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
          label="Pack"
          value={slice.pack ?? ''}
          empty="Not chosen"
          choices={choicesOf(PACK_NAMES)}
          onChoose={(value) => editAt('label.pack', value || null)}
        />
        {SEALED.includes(slice.pack) ? (
          <ChoiceField
            label="Hurdle against botulism, proven"
            value={slice.hurdle ?? ''}
            empty="None"
            choices={choicesOf(HURDLE_NAMES)}
            onChoose={(value) => editAt('label.hurdle', value || null)}
            findings={of('hurdle')}
          />
        ) : null}
        <NumberField
          path="label.storeAt"
          label="Keep at or below"
          kind="temperature"
          units={['C', 'F']}
          range={{ min: -40, max: 30 }}
          findings={of('storeAt')}
        />
        <NumberField
          path="label.life"
          label="Life from the cook"
          kind="time"
          units={['d']}
          hint="Set by your plan. Five days is short on purpose: common practice, no source."
          findings={of('life')}
        />
        <ChoiceField
          label="The day of the cook"
          value={slice.cookDayCounts ? 'yes' : 'no'}
          choices={[
            { value: 'yes', label: 'Counts as day one' },
            { value: 'no', label: 'Does not count' },
          ]}
          onChoose={(value) => editAt('label.cookDayCounts', value === 'yes')}
        />
        <ChoiceField
          label="Kind of date"
          value={slice.dateKind}
          choices={[
            { value: 'use-by', label: 'Use by' },
            { value: 'best-before', label: 'Best before' },
          ]}
          onChoose={(value) => editAt('label.dateKind', value)}
          findings={of('dateKind')}
        />
        <DateField
          path="label.cookedOn"
          label="Cooked on"
          hint="Blank: the day of the first cook in the log."
          findings={of('cookedOn')}
        />
        <DateField
          path="label.packedOn"
          label="Packed on"
          hint="It moves no date."
          findings={of('packedOn')}
        />
        <NumberField
          path="label.netWeight"
          label="Net weight of a pack"
          kind="mass"
          units={['g', 'kg', 'oz', 'lb']}
          hint={
            portionG === null
              ? 'Without the wrapping; with crust and jelly, where they are eaten.'
              : `A portion by the slicing worksheet: ${gramsText(portionG)}. Weigh the pack all the same.`
          }
        />
      </div>
      <div class="answers">
        <Answer
          label={slice.dateKind === 'use-by' ? 'Use by' : 'Best before'}
          value={values?.useBy ?? null}
          missing="Cannot tell: the day of the cook or the life is missing"
          worked={<p>{labelWorkings.useBy}</p>}
        >
          {values?.useBy ? (
            <p class="buttons">
              <button type="button" onClick={() => editAt('product.useBy', values.useBy ?? '')}>
                Write it on the batch sheet
              </button>
            </p>
          ) : null}
        </Answer>
        <Answer
          label="Storage line"
          value={values && values.storeAtC !== null ? storeLine(slice, values) : null}
          missing="Cannot tell: the temperature is missing"
          worked={<p>{labelWorkings.storageLine}</p>}
        />
        <Answer
          label="Net weight, as printed"
          value={values && values.netG !== null ? netText(values.netG, slice.market) : null}
          missing="Cannot tell: weigh a pack without its wrapping"
          worked={<p>{labelWorkings.netWeight}</p>}
        />
      </div>
      {verdict ? <VerdictLine verdict={verdict} /> : null}
    </>
  );
}
