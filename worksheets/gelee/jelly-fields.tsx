import type { Finding } from '@larderwright/calc/findings';
import { type QuantityKind, type Range, rangeIn, type Unit } from '@larderwright/calc/quantities';
import type { ComponentChildren } from 'preact';
import { type Choice, ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import {
  BLOOM_RULE_NAMES,
  GELATINE_FORM_NAMES,
  GELATINE_ORIGIN_NAMES,
  GELLING_NAMES,
  JELLY_USE_NAMES,
  SHEET_GRADE_NAMES,
} from '../words/gelee-names.ts';
import { choicesOf } from '../words/whole-muscle-names.ts';

interface FieldsProps {
  findings: readonly Finding[];
}

interface OneProps extends FieldsProps {
  of: string;
  label: string;
  kind: QuantityKind;
  units?: readonly Unit[];
  unitSlot?: ComponentChildren;
  range?: Range;
  hint?: string;
}

const VOLUMES: readonly Unit[] = ['mL', 'L'];
const TEMPERATURES: readonly Unit[] = ['C', 'F'];
const BLOOMS: Range = { min: 10, max: 400 };

/** One number of the jelly. */
function One({ of, findings, ...box }: OneProps) {
  return <NumberField path={`gelee.${of}`} {...box} findings={at(findings, `gelee.${of}`)} />;
}

interface PickProps extends FieldsProps {
  of: string;
  label: string;
  choices: readonly Choice[];
  hint?: string;
}

/** One choice of the jelly. */
function Pick({ of, findings, ...box }: PickProps) {
  const value = String(useAt(`gelee.${of}`) ?? '');
  return (
    <ChoiceField
      {...box}
      value={value}
      onChoose={(next) => editAt(`gelee.${of}`, next)}
      findings={at(findings, `gelee.${of}`)}
    />
  );
}

/** What stands behind a number where a unit would. */
const behind = (text: string) => <span class="field-unit">{text}</span>;

/** The liquid, what it is for, and what sets it. */
export function LiquidFields({ findings }: FieldsProps) {
  const agar = useAt('gelee.gelling') === 'agar';
  return (
    <div class="fields">
      <One
        of="liquid"
        label="Liquid to set"
        kind="volume"
        units={VOLUMES}
        hint="With the soaking water, wine and all else that goes in."
        findings={findings}
      />
      <Pick of="gelling" label="Set with" choices={choicesOf(GELLING_NAMES)} findings={findings} />
      {agar ? null : (
        <Pick of="use" label="What it is for" choices={choicesOf(JELLY_USE_NAMES)} findings={findings} />
      )}
      <One
        of="strength"
        label="Strength"
        kind="fraction"
        range={{ min: 0, max: 0.2 }}
        hint={`Grams to 100 mL of the liquid. Blank: the middle of what ${agar ? 'agar' : 'the use'} wants.`}
        findings={findings}
      />
      {agar ? null : (
        <One
          of="strengthBloom"
          label="Bloom the strength is told for"
          kind="count"
          range={BLOOMS}
          unitSlot={behind('bloom')}
          findings={findings}
        />
      )}
    </div>
  );
}

/** The gelatine on the shelf, and the rule that turns one bloom into another. */
export function GelatineFields({ findings }: FieldsProps) {
  const sheet = useAt('gelee.form') === 'sheet';
  return (
    <div class="fields">
      <Pick of="form" label="Form" choices={choicesOf(GELATINE_FORM_NAMES)} findings={findings} />
      {sheet ? (
        <Pick of="sheetGrade" label="Grade" choices={choicesOf(SHEET_GRADE_NAMES)} findings={findings} />
      ) : null}
      <One
        of="bloom"
        label="Bloom at hand"
        kind="count"
        range={BLOOMS}
        unitSlot={behind('bloom')}
        hint={
          sheet
            ? 'Off the pack. Until you type one, the middle of the grade is taken.'
            : 'Read it off the pack.'
        }
        findings={findings}
      />
      {sheet ? (
        <One
          of="sheetMass"
          label="One sheet weighs"
          kind="mass"
          units={['g']}
          range={rangeIn('g', 0, 50)}
          hint="Weigh ten and divide. Blank: usual for the grade."
          findings={findings}
        />
      ) : null}
      <Pick of="rule" label="Rule between blooms" choices={choicesOf(BLOOM_RULE_NAMES)} findings={findings} />
      <Pick
        of="origin"
        label="Made of"
        choices={choicesOf(GELATINE_ORIGIN_NAMES)}
        hint="By the pack. Guests and labels need to know."
        findings={findings}
      />
    </div>
  );
}

/** What the liquid itself does to the set. */
export function SetFields({ findings }: FieldsProps) {
  const share = { kind: 'fraction', findings } as const;
  return (
    <div class="fields">
      <One
        of="naturalSet"
        label="Stock sets by itself"
        range={{ min: 0, max: 0.2 }}
        hint="As gelatine of the liquid, by a plate test. 0: water."
        {...share}
      />
      <One
        of="ph"
        label="pH of the liquid"
        kind="ratio"
        range={{ min: 0, max: 14 }}
        unitSlot={behind('pH')}
        hint="By meter or paper. Blank: unknown, and nothing is added for acid."
        findings={findings}
      />
      <One of="alcohol" label="Alcohol, by volume of the liquid" {...share} />
      <One of="sugar" label="Sugar" {...share} />
    </div>
  );
}

/** Jelly that goes round or into something cooked. */
export function PouringFields({ findings }: FieldsProps) {
  return (
    <div class="fields">
      <One
        of="cavity"
        label="Room inside the crusts"
        kind="volume"
        units={VOLUMES}
        hint="All pies together, before the filling shrank."
        findings={findings}
      />
      <One of="pour" label="Jelly when poured" kind="temperature" units={TEMPERATURES} findings={findings} />
      <One of="core" label="Core when poured" kind="temperature" units={TEMPERATURES} findings={findings} />
    </div>
  );
}
