import type { DryCureMethod } from '@larderwright/calc/dry-cure';
import type { Finding } from '@larderwright/calc/findings';
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
        label="Way of the cure"
        value={method}
        choices={choicesOf(DRY_CURE_METHODS)}
        onChoose={(value) => editAt('dryCure.method', value)}
        hint="Only a weighed cure in a closed bag can be dosed and counted."
        findings={at(findings, 'dryCure.method')}
      />
      <NumberField
        path="dryCure.saltTarget"
        label="Salt wanted, of the meat"
        kind="fraction"
        range={{ min: 0, max: 0.2 }}
        hint="From all sources, the curing salt among them."
        findings={at(findings, 'dryCure.saltTarget')}
      />
      <NumberField
        path="dryCure.sugar"
        label="Sugar wanted, of the meat"
        kind="fraction"
        range={{ min: 0, max: 0.2 }}
        findings={at(findings, 'dryCure.sugar')}
      />
      <NumberField
        path="dryCure.nitriteTarget"
        label="Nitrite wanted, as sodium nitrite"
        kind="ppm"
        range={{ min: 0, max: 1000 }}
        hint="On the weight of the meat without skin. Type 0 when none is wanted."
        findings={at(findings, 'dryCure.nitriteTarget')}
      />
      <NumberField
        path="dryCure.chillTemp"
        label="Cold of the room"
        kind="temperature"
        units={['C', 'F']}
        hint="The warmest it gets, by its own thermometer."
        findings={at(findings, 'dryCure.chillTemp')}
      />
      <DateField
        path="dryCure.startedOn"
        label="Into the cure on"
        findings={at(findings, 'dryCure.startedOn')}
      />
      <NumberField
        path="dryCure.lossTarget"
        label="Weight to lose in drying"
        kind="fraction"
        range={{ min: 0, max: 0.8 }}
        hint="Of the weight without skin. Blank: it is not dried."
        findings={at(findings, 'dryCure.lossTarget')}
      />
    </div>
  );
}
