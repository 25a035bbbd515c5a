import {
  type BinderSlice,
  type PanadeKind,
  panadeOf,
  rawPanadeG,
  withPanade,
} from '@larderwright/calc/binder';
import type { Finding } from '@larderwright/calc/findings';
import { entryValue, type QuantityKind, type Range, rangeIn, type Unit } from '@larderwright/calc/quantities';
import * as say from '#words/binder-and-garnish/fields.ts';
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
        label={say.meat}
        kind="mass"
        units={MASSES}
        hint={say.blankLeanFatLiverOffalFormula}
        findings={findings}
      />
      <BinderField
        of="mouldWidth"
        label={say.insideWidthOfTheMould}
        kind="length"
        units={LENGTHS}
        range={INSIDE}
        hint={say.blankTheFirstMouldOfThe}
        findings={findings}
      />
      <BinderField
        of="mouldHeight"
        label={say.heightOfTheSlice}
        kind="length"
        units={LENGTHS}
        range={INSIDE}
        hint={say.blankAsDeepAsThatMould}
        findings={findings}
      />
      <BinderField
        of="sliceThickness"
        label={say.thicknessOfASlice}
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
        label={say.panadeWantedCookedOfTheMeat}
        kind="fraction"
        range={SHARE}
        hint={say.n10Usual20MostCommonPractice}
        findings={findings}
      />
      <ChoiceField
        label={say.kindOfPanade}
        value={kind}
        choices={PANADES}
        onChoose={choose}
        hint={say.putsUsualPartsBreadFlourCommon}
        findings={at(findings, 'binder.panadeKind')}
      />
      {kind === 'none' ? null : (
        <>
          <BinderField
            of="panadeLoss"
            label={say.lostAsSteamInThePan}
            kind="fraction"
            range={SHARE}
            findings={findings}
          />
          <BinderField
            of="panadeCooked"
            label={say.panadeCookedAndColdWeighed}
            kind="mass"
            units={MASSES}
            hint={say.blankReckonedFromItsParts}
            findings={findings}
          />
          <BinderField
            of="panadeTemp"
            label={say.temperatureOfThePanadeAtMixing}
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
        label={say.egg}
        kind="mass"
        units={MASSES}
        hint={say.wholeEggWithoutShellBeaten}
        findings={findings}
      />
      <BinderField
        of="cream"
        label={say.cream}
        kind="mass"
        units={MASSES}
        hint={say.n35Fat0None}
        findings={findings}
      />
    </div>
  );
}

const NAMED = [
  { value: 'no', label: say.no },
  { value: 'yes', label: say.yes },
];

/** Whether the federal limits on binders apply. */
export function NamedSausage() {
  const named = useAt('binder.usNamedSausage') === true;
  return (
    <div class="fields">
      <ChoiceField
        label={say.soldUnitedStatesSausageWhose}
        value={named ? 'yes' : 'no'}
        choices={NAMED}
        onChoose={(value) => editAt('binder.usNamedSausage', value === 'yes')}
      />
    </div>
  );
}
