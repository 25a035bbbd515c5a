import type { SignOff } from '@larderwright/calc/batch';
import { NumberField } from '../parts/number-field.tsx';
import { TextBox } from '../parts/text-box.tsx';
import { TextField } from '../parts/text-field.tsx';
import { nowIso } from '../state/clock.ts';
import { edit } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';

const ROLES: readonly { role: SignOff['role']; label: string }[] = [
  { role: 'made', label: 'Made by' },
  { role: 'checked', label: 'Checked by, another person' },
  { role: 'verified', label: 'Verified within 7 days by' },
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
      <NumberField path="product.portions" label="Portions planned" kind="count" />
      <TextField path="product.madeBy" label="Bench or person in charge" />
      <NumberField
        path="product.finished"
        label="Finished mass, all moulds, after chilling"
        kind="mass"
        units={['g', 'kg']}
        hint="Blank is unknown, not zero."
      />
      <TextField path="product.useBy" label="Use by" hint="Counted from the cook, as your plan says." />
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
