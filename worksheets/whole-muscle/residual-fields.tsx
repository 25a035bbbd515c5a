import { newResidualNitrite } from '@larderwright/calc/cure';
import type { Finding } from '@larderwright/calc/findings';
import * as say from '#words/whole-muscle/residual-fields.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { TextField } from '../parts/text-field.tsx';
import { $life, edit, editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';

const FORMS = [
  { value: 'sodium-nitrite', label: say.nitriteAsSodiumNitrite },
  { value: 'nitrite-ion', label: say.nitriteAsNitriteIon },
  {
    value: 'nitrite-and-nitrate-as-sodium-nitrite',
    label: say.nitriteNitrateTogetherSodium,
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
          {say.writeDownLaboratorysFigure}
        </button>
      </p>
    );
  }
  return (
    <fieldset>
      <legend>{say.nitriteLeftByALaboratory}</legend>
      <div class="fields">
        <NumberField
          path="cure.residual.found"
          label={say.foundInTheProduct}
          kind="ppm"
          range={{ min: 0, max: 10_000 }}
          hint={say.mgKgReportPrintsBlankLimit}
          findings={at(findings, 'cure.residual.found')}
        />
        <ChoiceField
          label={say.whatTheFigureCounts}
          value={residual.as ?? ''}
          empty={say.notChosenReadItOffThe}
          choices={FORMS}
          onChoose={(value) => editAt('cure.residual.as', value === '' ? null : value)}
          hint={say.sameNitriteThirdLessIonDo}
        />
        <TextField path="cure.residual.report" label={say.laboratoryDateNumberReport} />
      </div>
    </fieldset>
  );
}
