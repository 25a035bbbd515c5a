import type { Finding } from '@larderwright/calc/findings';
import { type QuantityKind, type Range, rangeIn, type Unit } from '@larderwright/calc/quantities';
import type { ComponentChildren } from 'preact';
import * as say from '#words/gelee/jelly-fields.ts';
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
        label={say.liquidToSet}
        kind="volume"
        units={VOLUMES}
        hint={say.soakingWaterWineAllElseGoes}
        findings={findings}
      />
      <Pick of="gelling" label={say.setWith} choices={choicesOf(GELLING_NAMES)} findings={findings} />
      {agar ? null : (
        <Pick of="use" label={say.whatItIsFor} choices={choicesOf(JELLY_USE_NAMES)} findings={findings} />
      )}
      <One
        of="strength"
        label={say.strength}
        kind="fraction"
        range={{ min: 0, max: 0.2 }}
        hint={say.grams100MlLiquidBlankMiddle(agar ? say.agar : say.theUse)}
        findings={findings}
      />
      {agar ? null : (
        <One
          of="strengthBloom"
          label={say.bloomTheStrengthIsToldFor}
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
      <Pick of="form" label={say.form} choices={choicesOf(GELATINE_FORM_NAMES)} findings={findings} />
      {sheet ? (
        <Pick of="sheetGrade" label={say.grade} choices={choicesOf(SHEET_GRADE_NAMES)} findings={findings} />
      ) : null}
      <One
        of="bloom"
        label={say.bloomAtHand}
        kind="count"
        range={BLOOMS}
        unitSlot={behind('bloom')}
        hint={sheet ? say.offPackUntilTypeOneMiddle : say.readItOffThePack}
        findings={findings}
      />
      {sheet ? (
        <One
          of="sheetMass"
          label={say.oneSheetWeighs}
          kind="mass"
          units={['g']}
          range={rangeIn('g', 0, 50)}
          hint={say.weighTenDivideBlankUsualGrade}
          findings={findings}
        />
      ) : null}
      <Pick
        of="rule"
        label={say.ruleBetweenBlooms}
        choices={choicesOf(BLOOM_RULE_NAMES)}
        findings={findings}
      />
      <Pick
        of="origin"
        label={say.madeOf}
        choices={choicesOf(GELATINE_ORIGIN_NAMES)}
        hint={say.packGuestsLabelsNeedKnow}
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
        label={say.stockSetsByItself}
        range={{ min: 0, max: 0.2 }}
        hint={say.gelatineLiquidPlateTest0Water}
        {...share}
      />
      <One
        of="ph"
        label={say.phOfTheLiquid}
        kind="ratio"
        range={{ min: 0, max: 14 }}
        unitSlot={behind('pH')}
        hint={say.meterPaperBlankUnknownNothing}
        findings={findings}
      />
      <One of="alcohol" label={say.alcoholByVolumeOfTheLiquid} {...share} />
      <One of="sugar" label={say.sugar} {...share} />
    </div>
  );
}

/** Jelly that goes round or into something cooked. */
export function PouringFields({ findings }: FieldsProps) {
  return (
    <div class="fields">
      <One
        of="cavity"
        label={say.roomInsideTheCrusts}
        kind="volume"
        units={VOLUMES}
        hint={say.allPiesTogetherBeforeFilling}
        findings={findings}
      />
      <One
        of="pour"
        label={say.jellyWhenPoured}
        kind="temperature"
        units={TEMPERATURES}
        findings={findings}
      />
      <One of="core" label={say.coreWhenPoured} kind="temperature" units={TEMPERATURES} findings={findings} />
    </div>
  );
}
