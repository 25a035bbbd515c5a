import type { CookMethod } from '@larderwright/calc/cook-plan';
import type { Finding } from '@larderwright/calc/findings';
import type { MouldItem } from '@larderwright/calc/mould';
import { type Entry, rangeIn } from '@larderwright/calc/quantities';
import * as say from '#words/cook-plan/fields.ts';
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
        <PlanChoice of="vessel" label={say.theMouldIsOf} names={VESSEL_NAMES} findings={findings} />
        <PlanField
          of="wall"
          label={say.itsWall}
          kind="length"
          units={LENGTHS}
          range={rangeIn('mm', 0, 30)}
          hint={say.blankUsualThicknessStoneware8}
          findings={findings}
        />
        <PlanChoice of="lid" label={say.overItsTop} names={LID_NAMES} findings={findings} />
        <PlanField
          of="start"
          label={say.coreWhenItGoesIn}
          kind="temperature"
          units={TEMPS}
          range={CORES}
          findings={findings}
        />
      </div>
      <details class="pack">
        <summary>{say.mixWhereFormulaDoesNotSay}</summary>
        <div class="fields">
          <PlanField of="water" label={say.waterOfTheMix} kind="fraction" findings={findings} />
          <PlanField of="protein" label={say.proteinOfTheMix} kind="fraction" findings={findings} />
          <PlanField of="fat" label={say.fatOfTheMix} kind="fraction" findings={findings} />
        </div>
      </details>
    </>
  );
}

/** Only where there is more than one. */
function WhichMould({ findings }: FieldsProps) {
  const moulds = useAt('mould.moulds') as readonly MouldItem[];
  const mouldId = useAt('cookPlan.mouldId');
  if (moulds.length === 0) return <p class="say">{say.mouldComesWorksheetMouldLining}</p>;
  if (moulds.length === 1) return null;
  return (
    <div class="fields">
      <ChoiceField
        label={say.plannedFor}
        value={typeof mouldId === 'string' ? mouldId : ''}
        empty={say.notChosenNoCurve}
        choices={moulds.map(({ id, name, shape }) => ({ value: id, label: name || SHAPE_NAMES[shape] }))}
        onChoose={(id) => editAt('cookPlan.mouldId', id === '' ? null : id)}
        hint={say.deepestDecidesWhenOvenEmpty}
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
      <PlanChoice of="method" label={say.cookedIn} names={METHOD_NAMES} findings={findings} />
      {method === 'steam' ? (
        <PlanField
          of="steam"
          label={say.steamOvenAt}
          kind="temperature"
          units={TEMPS}
          range={OVENS}
          findings={findings}
        />
      ) : method === 'poach' ? (
        <PlanField
          of="kettle"
          label={say.waterOfTheKettleAt}
          kind="temperature"
          units={TEMPS}
          range={WATERS}
          findings={findings}
        />
      ) : (
        <PlanField
          of="oven"
          label={say.ovenAt}
          kind="temperature"
          units={TEMPS}
          range={OVENS}
          findings={findings}
        />
      )}
      {method === 'bath' || method === 'oven' ? (
        <PlanChoice of="fan" label={say.airOfTheOven} names={FANS} />
      ) : null}
      {method === 'bath' ? <BathFields findings={findings} /> : null}
      {method === 'poach' ? (
        <PlanField
          of="level"
          label={say.waterStandsAt}
          kind="length"
          units={LENGTHS}
          hint={say.overBaseMouldBlankOverTop}
          findings={findings}
        />
      ) : null}
      <AltitudeField asking="cookPlan.altitude" hint={say.waterBoilsLowerUpThereBlank} findings={findings} />
    </div>
  );
}

const COVERS = { covered: say.coveredLidFoilOverWholePan, open: say.open };
const FANS = { still: say.still, fan: say.withItsFan };

function BathFields({ findings }: FieldsProps) {
  return (
    <>
      <PlanField
        of="bathWater"
        label={say.waterInThePan}
        kind="mass"
        units={['kg', 'g', 'lb']}
        findings={findings}
      />
      <PlanField
        of="bathStart"
        label={say.waterGoesInAt}
        kind="temperature"
        units={TEMPS}
        range={WATERS}
        findings={findings}
      />
      <PlanChoice
        of="cover"
        label={say.thePanIs}
        names={COVERS}
        hint={say.openBathStays7087C}
        findings={findings}
      />
      <PlanField
        of="mouldsInPan"
        label={say.mouldsInThisPan}
        kind="count"
        range={{ min: 1, max: 60 }}
        findings={findings}
      />
      <PlanField of="panLength" label={say.panLong} kind="length" units={LENGTHS} findings={findings} />
      <PlanField of="panWidth" label={say.panWide} kind="length" units={LENGTHS} findings={findings} />
      <PlanField of="panHeight" label={say.panDeep} kind="length" units={LENGTHS} findings={findings} />
      <PlanField
        of="level"
        label={say.waterStandsAt}
        kind="length"
        units={LENGTHS}
        hint={say.overBaseMouldBlankWorkedOut}
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
        label={say.coreToReach}
        kind="temperature"
        units={TEMPS}
        range={CORES}
        hint={say.blankTheLimitThatWasChosen}
        findings={findings}
      />
      <PlanField
        of="hold"
        label={say.keptInTheHeatFromThen}
        kind="time"
        units={MINUTES}
        range={rangeIn('h', 0, 24)}
        hint={say.blankHoldLimitTablePrints}
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
      <PlanField of="rest" label={say.restsFor} kind="time" units={MINUTES} findings={findings} />
      <PlanField of="room" label={say.inARoomOf} kind="temperature" units={TEMPS} findings={findings} />
      <PlanField
        of="press"
        label={say.underThePressFor}
        kind="time"
        units={MINUTES}
        hint={say.coldBoardTopBlankNotPressed}
        findings={findings}
      />
      {pressed ? (
        <PlanField of="pressAir" label={say.inAirOf} kind="temperature" units={TEMPS} findings={findings} />
      ) : null}
    </div>
  );
}
