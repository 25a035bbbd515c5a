import type { Finding } from '@larderwright/calc/findings';
import type { LabelSlice } from '@larderwright/calc/label';
import * as say from '#words/label/food-fields.ts';
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
        label={say.nameOfTheFood}
        hint={say.whatAnimalNotFancyNameAlone}
        findings={of('name')}
      />
      <TextField path="label.maker" label={say.makerAndPlace} />
      <TextField path="label.origin" label={say.originOfTheMeat} hint={say.whereYourLawAsksForIt} />
      <ChoiceField
        label={say.soldIn}
        value={slice.market ?? ''}
        empty={say.notChosen}
        choices={choicesOf(MARKET_NAMES)}
        onChoose={(value) => editAt('label.market', value || null)}
      />
      <ChoiceField
        label={say.eatenBy}
        value={slice.audience ?? ''}
        empty={say.notChosen}
        choices={choicesOf(AUDIENCE_NAMES)}
        onChoose={(value) => editAt('label.audience', value || null)}
        findings={of('audience')}
      />
      <ChoiceField
        label={say.looksLikeCutJointSliceMeat}
        value={slice.looksLikeCut ? 'yes' : 'no'}
        choices={[
          { value: 'no', label: say.no },
          { value: 'yes', label: say.yesHamLoinFillet },
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
        label={say.mixThatWentIntoTheMoulds}
        kind="mass"
        units={['g', 'kg', 'lb']}
        hint={say.blankWhatMouldsWeighedWhole}
        findings={of('filled')}
      />
      <ChoiceField
        label={say.lostInTheCook}
        value={slice.loss ?? ''}
        empty={say.nobodyHasSaid}
        choices={choicesOf(LOSS_NAMES)}
        onChoose={(value) => editAt('label.loss', value || null)}
        hint={say.fatRanOutNoWaterChanges}
        findings={of('loss')}
      />
      {slice.loss === 'fat-weighed' ? (
        <NumberField path="label.drainedFat" label={say.fatPouredOff} kind="mass" units={['g', 'kg']} />
      ) : null}
      {slice.loss === 'nothing' ? null : (
        <NumberField
          path="product.finished"
          label={say.finishedWeightAfterChilling}
          kind="mass"
          units={['g', 'kg', 'lb']}
          hint={say.crustJellyLiningIfEaten}
        />
      )}
    </div>
  );
}
