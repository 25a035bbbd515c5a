import type { Finding } from '@larderwright/calc/findings';
import type { LabelSlice } from '@larderwright/calc/label';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { TextField } from '../parts/text-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { AUDIENCE_NAMES, choicesOf, LOSS_NAMES, MARKET_NAMES } from '../words/label-names.ts';

/** What the food is called, where it is sold and to whom. */
export function FoodFields({ findings }: { findings: readonly Finding[] }) {
  const slice = useAt('label') as LabelSlice;
  const of = (field: string) => at(findings, `label.${field}`);
  return (
    <div class="fields">
      <TextField
        path="label.name"
        label="Name of the food"
        hint="What it is, with the animal. Not a fancy name alone."
        findings={of('name')}
      />
      <TextField path="label.maker" label="Maker and place" />
      <TextField path="label.origin" label="Origin of the meat" hint="Where your law asks for it." />
      <ChoiceField
        label="Sold in"
        value={slice.market ?? ''}
        empty="Not chosen"
        choices={choicesOf(MARKET_NAMES)}
        onChoose={(value) => editAt('label.market', value || null)}
      />
      <ChoiceField
        label="Eaten by"
        value={slice.audience ?? ''}
        empty="Not chosen"
        choices={choicesOf(AUDIENCE_NAMES)}
        onChoose={(value) => editAt('label.audience', value || null)}
        findings={of('audience')}
      />
      <ChoiceField
        label="Looks like a cut, joint or slice of meat or fish"
        value={slice.looksLikeCut ? 'yes' : 'no'}
        choices={[
          { value: 'no', label: 'No' },
          { value: 'yes', label: 'Yes: ham, loin, fillet' },
        ]}
        onChoose={(value) => editAt('label.looksLikeCut', value === 'yes')}
      />
    </div>
  );
}

/** What was filled, what was lost, what came out. */
export function MassFields({ findings }: { findings: readonly Finding[] }) {
  const slice = useAt('label') as LabelSlice;
  const of = (field: string) => at(findings, `label.${field}`);
  return (
    <div class="fields">
      <NumberField
        path="label.filled"
        label="Mix that went into the moulds"
        kind="mass"
        units={['g', 'kg', 'lb']}
        hint="Blank: what the moulds weighed, or the whole bowl."
        findings={of('filled')}
      />
      <ChoiceField
        label="Lost in the cook"
        value={slice.loss ?? ''}
        empty="Nobody has said"
        choices={choicesOf(LOSS_NAMES)}
        onChoose={(value) => editAt('label.loss', value || null)}
        hint="Fat that ran out is no water: it changes every figure."
        findings={of('loss')}
      />
      {slice.loss === 'fat-weighed' ? (
        <NumberField path="label.drainedFat" label="Fat poured off" kind="mass" units={['g', 'kg']} />
      ) : null}
      {slice.loss === 'nothing' ? null : (
        <NumberField
          path="product.finished"
          label="Finished weight, after chilling"
          kind="mass"
          units={['g', 'kg', 'lb']}
          hint="With crust, jelly and lining, if they are eaten."
        />
      )}
    </div>
  );
}
