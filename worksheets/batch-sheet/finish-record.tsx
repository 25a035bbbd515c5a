import type { SignOff } from '@larderwright/calc/batch';
import * as say from '#words/batch-sheet/finish-record.ts';
import { NumberField } from '../parts/number-field.tsx';
import { TextBox } from '../parts/text-box.tsx';
import { TextField } from '../parts/text-field.tsx';
import { nowIso } from '../state/clock.ts';
import { edit } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';

const ROLES: readonly { role: SignOff['role']; label: string }[] = [
  { role: 'made', label: say.madeBy },
  { role: 'checked', label: say.checkedByAnotherPerson },
  { role: 'verified', label: say.verifiedWithin7DaysBy },
];

function sign(role: SignOff['role'], name: string): void {
  edit((batch) => {
    const others = batch.signOffs.filter((each) => each.role !== role);
    return { ...batch, signOffs: name === '' ? others : [...others, { role, name, at: nowIso() }] };
  });
}

/** What only the end of the batch knows: yield, dates, signatures. */
export function FinishRecord() {
  const signOffs = useAt('signOffs') as SignOff[];
  return (
    <div class="fields">
      <NumberField path="product.portions" label={say.portionsPlanned} kind="count" />
      <TextField path="product.madeBy" label={say.benchOrPersonInCharge} />
      <NumberField
        path="product.finished"
        label={say.finishedMassAllMouldsAfter}
        kind="mass"
        units={['g', 'kg']}
        hint={say.blankIsUnknownNotZero}
      />
      <TextField path="product.useBy" label={say.useBy} hint={say.countedCookPlanSays} />
      {ROLES.map(({ role, label }) => (
        <TextBox
          key={role}
          label={label}
          text={signOffs.find((each) => each.role === role)?.name ?? ''}
          onText={(name) => sign(role, name)}
        />
      ))}
    </div>
  );
}
