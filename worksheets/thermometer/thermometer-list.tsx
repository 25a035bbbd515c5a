import type { Finding } from '@larderwright/calc/findings';
import { newThermometer, type Thermometer } from '@larderwright/calc/thermometer';
import * as say from '#words/thermometer/thermometer-list.ts';
import { DateField } from '../parts/date-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { later } from '../parts/later.tsx';
import { NotYet } from '../parts/not-yet.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RemovedRowLine } from '../parts/row-tools.tsx';
import { TextField } from '../parts/text-field.tsx';
import { newId } from '../state/clock.ts';
import { addRow, removeRow } from '../state/rows.ts';
import { $life } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';

const LIST = 'thermometers.thermometers';
const Result = later(() => import('./result.tsx').then((m) => m.Result));

/** Every thermometer with what it showed. */
export function ThermometerList({ findings }: { findings: readonly Finding[] }) {
  const thermometers = useAt(LIST) as readonly Thermometer[];
  const waking = useShared($life) === 'waking';
  return (
    <div class="probes">
      {thermometers.map((thermometer, place) => (
        <ThermometerCard
          key={thermometer.id}
          id={thermometer.id}
          name={thermometer.name.trim() || `Thermometer ${place + 1}`}
          findings={findings}
          removable={thermometers.length > 1}
        />
      ))}
      <RemovedRowLine list={LIST} />
      <p class="buttons">
        <button type="button" disabled={waking} onClick={() => addRow(LIST, newThermometer(newId()))}>
          {say.addAnotherThermometer}
        </button>
      </p>
    </div>
  );
}

interface CardProps {
  id: string;
  name: string;
  findings: readonly Finding[];
  removable: boolean;
}

function ThermometerCard({ id, name, findings, removable }: CardProps) {
  const path = `${LIST}.${id}`;
  const own = (field: string) => ({ path: `${path}.${field}`, findings: at(findings, `${path}.${field}`) });
  return (
    <fieldset class="probe">
      <legend>{name}</legend>
      <div class="fields">
        <TextField {...own('name')} label={say.thermometer} hint={say.asItIsMarked} />
        <NumberField
          {...own('ice')}
          label={say.showsInIce}
          kind="temperature"
          units={['C', 'F']}
          hint={say.crushedIceWaterStirredWait}
        />
        <NumberField
          {...own('boil')}
          label={say.showsInBoilingWater}
          kind="temperature"
          units={['C', 'F']}
          hint={say.aRollingBoilTheTipOff}
        />
        <NumberField
          {...own('step')}
          label={say.stepOfItsDisplay}
          kind="temperature-difference"
          units={['dC', 'dF']}
          range={{ min: 0, max: 5 }}
          hint={say.n01Or1AsIt}
        />
        <NumberField
          {...own('error')}
          label={say.errorAfterTheCheck}
          kind="temperature-difference"
          units={['dC', 'dF']}
          range={{ min: 0, max: 10 }}
          hint={say.makerPrintsBlankUnknownThenNo}
        />
        <DateField {...own('checkedOn')} label={say.checkedOn} />
        <TextField {...own('checkedBy')} label={say.checkedBy} />
      </div>
      <Result id={id} meanwhile={<NotYet />} />
      {removable ? (
        <p class="buttons">
          <button type="button" onClick={() => removeRow(LIST, id, name)}>
            {say.remove(name)}
          </button>
        </p>
      ) : null}
    </fieldset>
  );
}
