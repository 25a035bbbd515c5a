import type { Finding } from '@larderwright/calc/findings';
import { type QuantityKind, type Range, rangeIn, type Unit } from '@larderwright/calc/quantities';
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
        label="What is dried"
        value={typeof kind === 'string' ? kind : ''}
        empty="Not chosen: nothing is judged"
        choices={choicesOf(DRYING_KINDS)}
        onChoose={(value) => editAt('drying.kind', value === '' ? null : value)}
      />
      <TextField
        path="drying.approvedPlan"
        label="Accepted plan, by name or number"
        hint="The one your authority or a process specialist accepted in writing."
      />
    </div>
  );
}

/** Weight at the start, now, and what is to be lost. */
export function WeightFields({ findings }: FieldsProps) {
  return (
    <div class="fields">
      <One of="start" label="Weight when drying began" kind="mass" units={MASSES} findings={findings} />
      <One of="now" label="Weight now" kind="mass" units={MASSES} findings={findings} />
      <One
        of="lossTarget"
        label="Weight to lose"
        kind="fraction"
        range={{ min: 0, max: 0.8 }}
        hint="Of the weight when drying began. Your plan names it."
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
      <One of="startSalt" label="Salt at the start" range={{ min: 0, max: 0.2 }} {...share} />
      <One of="startMoisture" label="Moisture at the start" {...share} />
      <One of="startProtein" label="Protein at the start" {...share} />
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
          label="Water activity, measured"
          hint="A bare number such as 0.92."
          reads={(values) => values.measuredWaterActivity}
          problem="This is no water activity. Write a number from 0.5 to 1, such as 0.92."
        />
        <BareField
          of="ph"
          label="pH, measured"
          hint="A bare number such as 5.2."
          reads={(values) => values.ph}
          problem="This is no pH of a food. Write a number from 2 to 9, such as 5.2."
        />
        <One of="moisture" label="Moisture, by the laboratory" kind="fraction" findings={findings} />
        <One of="protein" label="Protein, by the laboratory" kind="fraction" findings={findings} />
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
        label="Casing across, stuffed"
        kind="length"
        units={['mm', 'cm', 'in']}
        range={rangeIn('mm', 0, 500)}
        findings={findings}
      />
      <One of="trichina.total" label="All of the mix" {...mass} />
      <One
        of="trichina.dryIngredients"
        label="Dry ingredients in it"
        hint="Salt, spice, sugar and all else that goes in dry."
        {...mass}
      />
      <One of="trichina.salt" label="Salt in it" {...mass} />
      <One
        of="trichina.holdTemp"
        label="Held before drying at"
        kind="temperature"
        units={['C', 'F']}
        hint="Blank: not held warm."
        findings={findings}
      />
      <One of="trichina.holdHours" label="Held for" kind="time" units={['h', 'd']} findings={findings} />
    </div>
  );
}
