import type { DryCureMethod } from '@larderwright/calc/dry-cure';
import type { Finding } from '@larderwright/calc/findings';
import * as say from '#words/dry-cure/cure-fields.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { DateField } from '../parts/date-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { ownMuscleFields } from '../whole-muscle/pack-and-people.tsx';
import { DRY_CURE_METHODS } from '../words/dry-cure-names.ts';
import { choicesOf } from '../words/whole-muscle-names.ts';

const OWN = ['method', 'saltTarget', 'sugar', 'nitriteTarget', 'chillTemp', 'startedOn', 'lossTarget'];

/** Fields of this page, the pieces apart, that show their own findings. */
export const OWN_FIELDS: readonly string[] = [
  ...ownMuscleFields('dryCure'),
  ...OWN.map((key) => `dryCure.${key}`),
];

/** What the cure is to be, for every piece alike. */
export function CureFields({ findings }: { findings: readonly Finding[] }) {
  const method = useAt('dryCure.method') as DryCureMethod;
  return (
    <div class="fields">
      <ChoiceField
        label={say.wayOfTheCure}
        value={method}
        choices={choicesOf(DRY_CURE_METHODS)}
        onChoose={(value) => editAt('dryCure.method', value)}
        hint={say.onlyWeighedCureClosedBagCan}
        findings={at(findings, 'dryCure.method')}
      />
      <NumberField
        path="dryCure.saltTarget"
        label={say.saltWantedOfTheMeat}
        kind="fraction"
        range={{ min: 0, max: 0.2 }}
        hint={say.allSourcesCuringSaltAmong}
        findings={at(findings, 'dryCure.saltTarget')}
      />
      <NumberField
        path="dryCure.sugar"
        label={say.sugarWantedOfTheMeat}
        kind="fraction"
        range={{ min: 0, max: 0.2 }}
        findings={at(findings, 'dryCure.sugar')}
      />
      <NumberField
        path="dryCure.nitriteTarget"
        label={say.nitriteWantedAsSodiumNitrite}
        kind="ppm"
        range={{ min: 0, max: 1000 }}
        hint={say.weightMeatWithoutSkinType0}
        findings={at(findings, 'dryCure.nitriteTarget')}
      />
      <NumberField
        path="dryCure.chillTemp"
        label={say.coldOfTheRoom}
        kind="temperature"
        units={['C', 'F']}
        hint={say.warmestGetsOwnThermometer}
        findings={at(findings, 'dryCure.chillTemp')}
      />
      <DateField
        path="dryCure.startedOn"
        label={say.intoTheCureOn}
        findings={at(findings, 'dryCure.startedOn')}
      />
      <NumberField
        path="dryCure.lossTarget"
        label={say.weightToLoseInDrying}
        kind="fraction"
        range={{ min: 0, max: 0.8 }}
        hint={say.weightWithoutSkinBlankNotDried}
        findings={at(findings, 'dryCure.lossTarget')}
      />
    </div>
  );
}
