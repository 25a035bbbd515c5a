import { newResidualNitrite } from '@larderwright/calc/cure';
import type { Finding } from '@larderwright/calc/findings';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { TextField } from '../parts/text-field.tsx';
import { $life, edit, editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';

const FORMS = [
  { value: 'sodium-nitrite', label: 'Nitrite, as sodium nitrite' },
  { value: 'nitrite-ion', label: 'Nitrite, as nitrite ion' },
  {
    value: 'nitrite-and-nitrate-as-sodium-nitrite',
    label: 'Nitrite and nitrate together, as sodium nitrite',
  },
];

/** What a laboratory found left in the product: the one thing that can judge a limit on what is left. */
export function ResidualFields({ findings }: { findings: readonly Finding[] }) {
  const { residual } = useAt('cure') as { residual?: { as: string | null } };
  const waking = useShared($life) === 'waking';
  if (residual === undefined) {
    const begin = () =>
      edit((batch) => ({ ...batch, cure: { ...batch.cure, residual: newResidualNitrite() } }));
    return (
      <p class="buttons">
        <button type="button" disabled={waking} onClick={begin}>
          Write down a laboratory’s figure of nitrite left
        </button>
      </p>
    );
  }
  return (
    <fieldset>
      <legend>Nitrite left, by a laboratory</legend>
      <div class="fields">
        <NumberField
          path="cure.residual.found"
          label="Found in the product"
          kind="ppm"
          range={{ min: 0, max: 10_000 }}
          hint="mg/kg, as the report prints it. Blank: the limit on what is left cannot be told."
          findings={at(findings, 'cure.residual.found')}
        />
        <ChoiceField
          label="What the figure counts"
          value={residual.as ?? ''}
          empty="Not chosen: read it off the report"
          choices={FORMS}
          onChoose={(value) => editAt('cure.residual.as', value === '' ? null : value)}
          hint="The same nitrite is a third less as ion. Do not guess."
        />
        <TextField path="cure.residual.report" label="Laboratory, date, number of the report" />
      </div>
    </fieldset>
  );
}
