import type { Finding } from '@larderwright/calc/findings';
import { type QuantityKind, type Range, rangeIn, type Unit } from '@larderwright/calc/quantities';
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
        label="Warmest it may end"
        kind="temperature"
        units={TEMPS}
        hint="Blank: by the family in the formula. Coarse 12 °C (54 °F), fine 10 °C (50 °F), mousseline 8 °C (46 °F): common practice, no source."
        findings={findings}
      />
      <ChillField
        of="iceTemp"
        label="Temperature of the ice"
        kind="temperature"
        units={TEMPS}
        findings={findings}
      />
      <ChillField
        of="liquidAllowance"
        label="Water the formula allows as ice"
        kind="mass"
        units={['g', 'kg']}
        hint="Blank: not known, and nothing is said about it."
        findings={findings}
      />
      <ChoiceField
        label="Heat of the fat"
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
      <ChillField of="room" label="Room" kind="temperature" units={TEMPS} findings={findings} />
      <ChillField
        of="layer"
        label="How thick the meat lies"
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
        label="Edge of the cubes"
        kind="length"
        units={['mm', 'cm', 'in']}
        range={rangeIn('mm', 0, 200)}
        hint="Usual for 25 mm cubes: 15 to 20 min, until firm at the edge, not solid. Common practice, no source."
        findings={findings}
      />
      <ChillField of="freezer" label="Freezer" kind="temperature" units={TEMPS} findings={findings} />
    </div>
  );
}
