import type { Finding } from '@larderwright/calc/findings';
import { type QuantityKind, type Range, rangeIn, type Unit } from '@larderwright/calc/quantities';
import * as say from '#words/chill-budget/limit-fields.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { FAT_HEAT_NAMES } from '../words/chill-budget-names.ts';

const FAT_HEATS = Object.entries(FAT_HEAT_NAMES).map(([value, label]) => ({ value, label }));
const TEMPS: readonly Unit[] = ['C', 'F'];

interface ChillFieldProps {
  of: string;
  label: string;
  kind: QuantityKind;
  units: readonly Unit[];
  range?: Range;
  hint?: string;
  findings: readonly Finding[];
}

function ChillField({ of, findings, ...field }: ChillFieldProps) {
  const path = `chillBudget.${of}`;
  return <NumberField path={path} findings={at(findings, path)} {...field} />;
}

/** How warm it may end, and with what ice. */
export function LimitFields({ findings }: { findings: readonly Finding[] }) {
  const fatHeat = String(useAt('chillBudget.fatHeat'));
  return (
    <div class="fields">
      <ChillField
        of="limit"
        label={say.warmestItMayEnd}
        kind="temperature"
        units={TEMPS}
        hint={say.blankFamilyFormulaCoarse12C}
        findings={findings}
      />
      <ChillField
        of="iceTemp"
        label={say.temperatureOfTheIce}
        kind="temperature"
        units={TEMPS}
        findings={findings}
      />
      <ChillField
        of="liquidAllowance"
        label={say.waterTheFormulaAllowsAsIce}
        kind="mass"
        units={['g', 'kg']}
        hint={say.blankNotKnownNothingSaidAbout}
        findings={findings}
      />
      <ChoiceField
        label={say.heatOfTheFat}
        value={fatHeat}
        choices={FAT_HEATS}
        onChoose={(value) => editAt('chillBudget.fatHeat', value)}
      />
    </div>
  );
}

/** The room the meat lies in. */
export function RoomFields({ findings }: { findings: readonly Finding[] }) {
  return (
    <div class="fields">
      <ChillField of="room" label={say.room} kind="temperature" units={TEMPS} findings={findings} />
      <ChillField
        of="layer"
        label={say.howThickTheMeatLies}
        kind="length"
        units={['mm', 'cm', 'in']}
        range={rangeIn('mm', 0, 500)}
        findings={findings}
      />
    </div>
  );
}

/** The freezer the cubes are firmed in. */
export function FreezerFields({ findings }: { findings: readonly Finding[] }) {
  return (
    <div class="fields">
      <ChillField
        of="cube"
        label={say.edgeOfTheCubes}
        kind="length"
        units={['mm', 'cm', 'in']}
        range={rangeIn('mm', 0, 200)}
        hint={say.usual25MmCubes1520}
        findings={findings}
      />
      <ChillField of="freezer" label={say.freezer} kind="temperature" units={TEMPS} findings={findings} />
    </div>
  );
}
