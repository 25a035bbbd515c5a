import {
  type BinderSlice,
  type PanadeKind,
  panadeOf,
  rawPanadeG,
  withPanade,
} from '@larderwright/calc/binder';
import type { Finding } from '@larderwright/calc/findings';
import { entryValue, type QuantityKind, type Range, rangeIn, type Unit } from '@larderwright/calc/quantities';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { edit, editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { PANADE_NAMES } from '../words/binder-names.ts';

const MASSES: readonly Unit[] = ['g', 'kg', 'lb', 'oz'];
const LENGTHS: readonly Unit[] = ['mm', 'cm', 'in'];
const INSIDE = rangeIn('mm', 0, 2000);
const SHARE: Range = { min: 0, max: 1 };
const PANADES = Object.entries(PANADE_NAMES).map(([value, label]) => ({ value, label }));

interface BinderFieldProps {
  of: string;
  label: string;
  kind: QuantityKind;
  units?: readonly Unit[];
  range?: Range;
  hint?: string;
  findings: readonly Finding[];
}

function BinderField({ of, findings, ...field }: BinderFieldProps) {
  const path = `binder.${of}`;
  return <NumberField path={path} findings={at(findings, path)} {...field} />;
}

/** What the shares are of, and what the slice is cut from. */
export function MeatFields({ findings }: { findings: readonly Finding[] }) {
  return (
    <div class="fields">
      <BinderField
        of="meat"
        label="Meat"
        kind="mass"
        units={MASSES}
        hint="Blank: lean, fat, liver and offal of the formula."
        findings={findings}
      />
      <BinderField
        of="mouldWidth"
        label="Inside width of the mould"
        kind="length"
        units={LENGTHS}
        range={INSIDE}
        hint="Blank: the first mould of the batch."
        findings={findings}
      />
      <BinderField
        of="mouldHeight"
        label="Height of the slice"
        kind="length"
        units={LENGTHS}
        range={INSIDE}
        hint="Blank: as deep as that mould is filled."
        findings={findings}
      />
      <BinderField
        of="sliceThickness"
        label="Thickness of a slice"
        kind="length"
        units={LENGTHS}
        range={rangeIn('mm', 0, 100)}
        findings={findings}
      />
    </div>
  );
}

/** Raw panade for the share wanted, by a kind's usual loss; null while the meat or the share is not known. */
export function rawForShare(slice: BinderSlice, kind: PanadeKind, meatG: number | null): number | null {
  const share = entryValue('fraction', slice.panadeShare, { range: SHARE });
  return share === null || meatG === null ? null : rawPanadeG(share * meatG, panadeOf(kind).lossFraction);
}

/** Which panade, how much of it, and how cold it is. */
export function PanadeFields({ findings, meatG }: { findings: readonly Finding[]; meatG: number | null }) {
  const kind = useAt('binder.panadeKind') as PanadeKind;
  const choose = (value: string) =>
    edit((batch) => {
      const { binder } = batch;
      if (!binder) return batch;
      const wanted = value as PanadeKind;
      const knownG = meatG ?? entryValue('mass', binder.meat);
      return { ...batch, binder: withPanade(binder, wanted, rawForShare(binder, wanted, knownG)) };
    });
  return (
    <div class="fields">
      <BinderField
        of="panadeShare"
        label="Panade wanted, cooked, of the meat"
        kind="fraction"
        range={SHARE}
        hint="10 % is usual, 20 % the most: common practice, no source."
        findings={findings}
      />
      <ChoiceField
        label="Kind of panade"
        value={kind}
        choices={PANADES}
        onChoose={choose}
        hint="Puts in its usual parts. Bread and flour: common practice; the others: from memory, no source."
        findings={at(findings, 'binder.panadeKind')}
      />
      {kind === 'none' ? null : (
        <>
          <BinderField
            of="panadeLoss"
            label="Lost as steam in the pan"
            kind="fraction"
            range={SHARE}
            findings={findings}
          />
          <BinderField
            of="panadeCooked"
            label="Panade cooked and cold, weighed"
            kind="mass"
            units={MASSES}
            hint="Blank: reckoned from its parts."
            findings={findings}
          />
          <BinderField
            of="panadeTemp"
            label="Temperature of the panade at mixing"
            kind="temperature"
            units={['C', 'F']}
            findings={findings}
          />
        </>
      )}
    </div>
  );
}

/** Egg and cream, 0 when there is none. */
export function EggFields({ findings }: { findings: readonly Finding[] }) {
  return (
    <div class="fields">
      <BinderField
        of="egg"
        label="Egg"
        kind="mass"
        units={MASSES}
        hint="Whole egg without its shell, beaten and weighed. 0: none."
        findings={findings}
      />
      <BinderField
        of="cream"
        label="Cream"
        kind="mass"
        units={MASSES}
        hint="35 % fat. 0: none."
        findings={findings}
      />
    </div>
  );
}

const NAMED = [
  { value: 'no', label: 'No' },
  { value: 'yes', label: 'Yes' },
];

/** Whether the federal limits on binders apply. */
export function NamedSausage() {
  const named = useAt('binder.usNamedSausage') === true;
  return (
    <div class="fields">
      <ChoiceField
        label="Sold in the United States as a sausage whose name limits binders"
        value={named ? 'yes' : 'no'}
        choices={NAMED}
        onChoose={(value) => editAt('binder.usNamedSausage', value === 'yes')}
      />
    </div>
  );
}
