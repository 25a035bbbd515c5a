import type { Finding } from '@larderwright/calc/findings';
import { type QuantityKind, type Range, rangeIn, type Unit } from '@larderwright/calc/quantities';
import * as say from '#words/drying/lot-fields.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { TextBox } from '../parts/text-box.tsx';
import { TextField } from '../parts/text-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { DRYING_KINDS } from '../words/drying-names.ts';
import { choicesOf } from '../words/whole-muscle-names.ts';
import { $drying } from './computed.ts';

const MASSES: readonly Unit[] = ['g', 'kg', 'lb', 'oz'];

/** Fields of this page that show their own findings. */
export const OWN_FIELDS: readonly string[] = [
  ...['start', 'now', 'lossTarget', 'startSalt', 'startMoisture', 'startProtein'],
  ...['moisture', 'protein', 'waterActivity', 'ph', 'degreeHourRule', 'reachedPh53'],
  ...['casing', 'holdTemp', 'holdHours', 'total', 'dryIngredients', 'salt'].map((key) => `trichina.${key}`),
].map((key) => `drying.${key}`);

interface FieldsProps {
  findings: readonly Finding[];
}

interface OneProps extends FieldsProps {
  of: string;
  label: string;
  kind: QuantityKind;
  units?: readonly Unit[];
  range?: Range;
  hint?: string;
}

/** One number of the lot. */
function One({ of, findings, ...box }: OneProps) {
  return <NumberField path={`drying.${of}`} {...box} findings={at(findings, `drying.${of}`)} />;
}

/** What is dried, and by which plan. The stop about the plan stands on top of the page. */
export function PlanFields() {
  const kind = useAt('drying.kind');
  return (
    <div class="fields">
      <ChoiceField
        label={say.whatIsDried}
        value={typeof kind === 'string' ? kind : ''}
        empty={say.notChosenNothingIsJudged}
        choices={choicesOf(DRYING_KINDS)}
        onChoose={(value) => editAt('drying.kind', value === '' ? null : value)}
      />
      <TextField
        path="drying.approvedPlan"
        label={say.acceptedPlanByNameOrNumber}
        hint={say.oneAuthorityProcessSpecialist}
      />
    </div>
  );
}

/** Weight at the start, now, and what is to be lost. */
export function WeightFields({ findings }: FieldsProps) {
  return (
    <div class="fields">
      <One of="start" label={say.weightWhenDryingBegan} kind="mass" units={MASSES} findings={findings} />
      <One of="now" label={say.weightNow} kind="mass" units={MASSES} findings={findings} />
      <One
        of="lossTarget"
        label={say.weightToLose}
        kind="fraction"
        range={{ min: 0, max: 0.8 }}
        hint={say.weightWhenDryingBeganPlanNames}
        findings={findings}
      />
    </div>
  );
}

/** What the raw mix or the cured meat held when drying began. */
export function StartFields({ findings }: FieldsProps) {
  const share = { kind: 'fraction', findings } as const;
  return (
    <div class="fields">
      <One of="startSalt" label={say.saltAtTheStart} range={{ min: 0, max: 0.2 }} {...share} />
      <One of="startMoisture" label={say.moistureAtTheStart} {...share} />
      <One of="startProtein" label={say.proteinAtTheStart} {...share} />
    </div>
  );
}

/** What a laboratory or an instrument measured on the product. */
export function LaboratoryFields({ findings }: FieldsProps) {
  return (
    <>
      <div class="fields">
        <BareField
          of="waterActivity"
          label={say.waterActivityMeasured}
          hint={say.aBareNumberSuchAs0}
          reads={(values) => values.measuredWaterActivity}
          problem={say.noWaterActivityWriteNumber0}
        />
        <BareField
          of="ph"
          label={say.phMeasured}
          hint={say.aBareNumberSuchAs5}
          reads={(values) => values.ph}
          problem={say.noPhFoodWriteNumber2}
        />
        <One of="moisture" label={say.moistureByTheLaboratory} kind="fraction" findings={findings} />
        <One of="protein" label={say.proteinByTheLaboratory} kind="fraction" findings={findings} />
      </div>
      <FindingList findings={[...at(findings, 'drying.waterActivity'), ...at(findings, 'drying.ph')]} />
    </>
  );
}

type DryingValues = NonNullable<import('./compute.ts').DryingComputed['values']>;

interface BareProps {
  of: 'waterActivity' | 'ph';
  label: string;
  hint: string;
  reads: (values: DryingValues) => number | null;
  problem: string;
}

/** A number without a unit, kept letter for letter. */
function BareField({ of, label, hint, reads, problem }: BareProps) {
  const text = String(useAt(`drying.${of}`) ?? '');
  const computed = useShared($drying);
  const unread = computed.state === 'ready' && text.trim() !== '' && reads(computed.value.values) === null;
  return (
    <TextBox
      label={label}
      text={text}
      onText={(next) => editAt(`drying.${of}`, next)}
      hint={hint}
      problem={unread ? problem : undefined}
    />
  );
}

/** The mix and the casing, as the rule against Trichinella counts them. */
export function TrichinaFields({ findings }: FieldsProps) {
  const mass = { kind: 'mass', units: MASSES, findings } as const;
  return (
    <div class="fields">
      <One
        of="trichina.casing"
        label={say.casingAcrossStuffed}
        kind="length"
        units={['mm', 'cm', 'in']}
        range={rangeIn('mm', 0, 500)}
        findings={findings}
      />
      <One of="trichina.total" label={say.allOfTheMix} {...mass} />
      <One
        of="trichina.dryIngredients"
        label={say.dryIngredientsInIt}
        hint={say.saltSpiceSugarAllElseGoes}
        {...mass}
      />
      <One of="trichina.salt" label={say.saltInIt} {...mass} />
      <One
        of="trichina.holdTemp"
        label={say.heldBeforeDryingAt}
        kind="temperature"
        units={['C', 'F']}
        hint={say.blankNotHeldWarm}
        findings={findings}
      />
      <One of="trichina.holdHours" label={say.heldFor} kind="time" units={['h', 'd']} findings={findings} />
    </div>
  );
}
