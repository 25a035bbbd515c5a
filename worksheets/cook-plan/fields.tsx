import type { CookMethod } from '@larderwright/calc/cook-plan';
import type { Finding } from '@larderwright/calc/findings';
import type { MouldItem } from '@larderwright/calc/mould';
import { type Entry, rangeIn } from '@larderwright/calc/quantities';
import { AltitudeField } from '../parts/altitude-field.tsx';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { editAt } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { LID_NAMES, METHOD_NAMES, VESSEL_NAMES } from '../words/cook-plan-names.ts';
import { SHAPE_NAMES } from '../words/mould-names.ts';
import { LENGTHS, MINUTES, PlanChoice, PlanField, TEMPS } from './plan-field.tsx';

interface FieldsProps {
  findings: readonly Finding[];
}

const OVENS = rangeIn('C', 40, 300);
const WATERS = rangeIn('C', 0, 100);
const CORES = rangeIn('C', -5, 100);

/** Which mould, what it is made of, and what is in it. */
export function MouldFields({ findings }: FieldsProps) {
  return (
    <>
      <WhichMould findings={findings} />
      <div class="fields">
        <PlanChoice of="vessel" label="The mould is of" names={VESSEL_NAMES} findings={findings} />
        <PlanField
          of="wall"
          label="Its wall"
          kind="length"
          units={LENGTHS}
          range={rangeIn('mm', 0, 30)}
          hint="Blank: the usual thickness. Stoneware 8 mm, cast iron 4 mm, tinplate 0.5 mm."
          findings={findings}
        />
        <PlanChoice of="lid" label="Over its top" names={LID_NAMES} findings={findings} />
        <PlanField
          of="start"
          label="Core when it goes in"
          kind="temperature"
          units={TEMPS}
          range={CORES}
          findings={findings}
        />
      </div>
      <details class="pack">
        <summary>The mix, where the formula does not say</summary>
        <div class="fields">
          <PlanField of="water" label="Water of the mix" kind="fraction" findings={findings} />
          <PlanField of="protein" label="Protein of the mix" kind="fraction" findings={findings} />
          <PlanField of="fat" label="Fat of the mix" kind="fraction" findings={findings} />
        </div>
      </details>
    </>
  );
}

/** Only where there is more than one. */
function WhichMould({ findings }: FieldsProps) {
  const moulds = useAt('mould.moulds') as readonly MouldItem[];
  const mouldId = useAt('cookPlan.mouldId');
  if (moulds.length === 0)
    return (
      <p class="say">
        The mould comes from the worksheet Mould, lining and fill: measure it there first. Mould: ______ ×
        ______ × ______ mm.
      </p>
    );
  if (moulds.length === 1) return null;
  return (
    <div class="fields">
      <ChoiceField
        label="Planned for"
        value={typeof mouldId === 'string' ? mouldId : ''}
        empty="Not chosen: no curve"
        choices={moulds.map(({ id, name, shape }) => ({ value: id, label: name || SHAPE_NAMES[shape] }))}
        onChoose={(id) => editAt('cookPlan.mouldId', id === '' ? null : id)}
        hint="The deepest decides when the oven is empty and the chiller is needed."
        findings={at(findings, 'cookPlan.mouldId')}
      />
    </div>
  );
}

/** What cooks it. Only the fields that the way of cooking needs. */
export function HeatFields({ findings }: FieldsProps) {
  const method = useAt('cookPlan.method') as CookMethod;
  return (
    <div class="fields">
      <PlanChoice of="method" label="Cooked in" names={METHOD_NAMES} findings={findings} />
      {method === 'steam' ? (
        <PlanField
          of="steam"
          label="Steam oven at"
          kind="temperature"
          units={TEMPS}
          range={OVENS}
          findings={findings}
        />
      ) : method === 'poach' ? (
        <PlanField
          of="kettle"
          label="Water of the kettle at"
          kind="temperature"
          units={TEMPS}
          range={WATERS}
          findings={findings}
        />
      ) : (
        <PlanField
          of="oven"
          label="Oven at"
          kind="temperature"
          units={TEMPS}
          range={OVENS}
          findings={findings}
        />
      )}
      {method === 'bath' || method === 'oven' ? (
        <PlanChoice of="fan" label="Air of the oven" names={FANS} />
      ) : null}
      {method === 'bath' ? <BathFields findings={findings} /> : null}
      {method === 'poach' ? (
        <PlanField
          of="level"
          label="Water stands at"
          kind="length"
          units={LENGTHS}
          hint="Over the base of the mould. Blank: over the top of it."
          findings={findings}
        />
      ) : null}
      <AltitudeField
        asking="cookPlan.altitude"
        hint="Water boils lower up there. Blank: the sea. The thermometer check shares it."
        findings={findings}
      />
    </div>
  );
}

const COVERS = { covered: 'Covered: lid or foil over the whole pan', open: 'Open' };
const FANS = { still: 'Still', fan: 'With its fan' };

function BathFields({ findings }: FieldsProps) {
  return (
    <>
      <PlanField
        of="bathWater"
        label="Water in the pan"
        kind="mass"
        units={['kg', 'g', 'lb']}
        findings={findings}
      />
      <PlanField
        of="bathStart"
        label="Water goes in at"
        kind="temperature"
        units={TEMPS}
        range={WATERS}
        findings={findings}
      />
      <PlanChoice
        of="cover"
        label="The pan is"
        names={COVERS}
        hint="An open bath stays at 70 to 87 °C (158 to 189 °F) in most ovens; a covered one climbs to the boil."
        findings={findings}
      />
      <PlanField
        of="mouldsInPan"
        label="Moulds in this pan"
        kind="count"
        range={{ min: 1, max: 60 }}
        findings={findings}
      />
      <PlanField of="panLength" label="Pan, long" kind="length" units={LENGTHS} findings={findings} />
      <PlanField of="panWidth" label="Pan, wide" kind="length" units={LENGTHS} findings={findings} />
      <PlanField of="panHeight" label="Pan, deep" kind="length" units={LENGTHS} findings={findings} />
      <PlanField
        of="level"
        label="Water stands at"
        kind="length"
        units={LENGTHS}
        hint="Over the base of the mould. Blank: worked out from water and pan."
        findings={findings}
      />
    </>
  );
}

/** How far it is cooked. */
export function AimFields({ findings }: FieldsProps) {
  return (
    <div class="fields">
      <PlanField
        of="target"
        label="Core to reach"
        kind="temperature"
        units={TEMPS}
        range={CORES}
        hint="Blank: the limit that was chosen."
        findings={findings}
      />
      <PlanField
        of="hold"
        label="Kept in the heat from then on"
        kind="time"
        units={MINUTES}
        range={rangeIn('h', 0, 24)}
        hint="Blank: the hold of that limit, as its table prints it. Nothing is worked out between two rows."
        findings={findings}
      />
    </div>
  );
}

/** Between the heat and the cold. */
export function RestFields({ findings }: FieldsProps) {
  const pressed = (useAt('cookPlan.press') as Entry).text.trim() !== '';
  return (
    <div class="fields">
      <PlanField of="rest" label="Rests for" kind="time" units={MINUTES} findings={findings} />
      <PlanField of="room" label="in a room of" kind="temperature" units={TEMPS} findings={findings} />
      <PlanField
        of="press"
        label="Under the press for"
        kind="time"
        units={MINUTES}
        hint="In the cold, board on top. Blank: not pressed before the chill."
        findings={findings}
      />
      {pressed ? (
        <PlanField of="pressAir" label="in air of" kind="temperature" units={TEMPS} findings={findings} />
      ) : null}
    </div>
  );
}
