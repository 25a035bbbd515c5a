import { finestStep, type Scale } from '@larderwright/calc/kitchen';
import { blankEntry, entryValue, formatQuantity } from '@larderwright/calc/quantities';
import { NumberBox } from '../parts/number-box.tsx';
import { TextBox } from '../parts/text-box.tsx';
import { newId } from '../state/clock.ts';
import { $kitchen, changeKitchen } from '../state/kitchen.ts';
import { useShared } from '../state/use-shared.ts';
import { SETTINGS } from '../words/settings.ts';

const RANGE_G = { min: 0, max: 100 };

const changeScale = (id: string, patch: Partial<Scale>) =>
  changeKitchen((now) => ({
    ...now,
    scales: now.scales.map((scale) => (scale.id === id ? { ...scale, ...patch } : scale)),
  }));

/** The kitchen's scales and what their last digit moves by. */
export function Scales() {
  const { scales } = useShared($kitchen).kitchen;
  const finest = finestStep({ scales });
  const finestG = finest === null ? null : entryValue('mass', finest);
  const add = () =>
    changeKitchen((now) => ({
      ...now,
      scales: [...now.scales, { id: newId(), name: '', step: blankEntry('g') }],
    }));
  return (
    <section aria-labelledby="scales">
      <h2 id="scales">{SETTINGS.scales}</h2>
      <p class="say">{SETTINGS.scalesAbout}</p>
      {scales.map((scale, index) => (
        <ScaleRow
          key={scale.id}
          scale={scale}
          called={scale.name.trim() || SETTINGS.unnamed(SETTINGS.scale, index + 1)}
        />
      ))}
      <p class="buttons">
        <button type="button" onClick={add}>
          {SETTINGS.addScale}
        </button>
      </p>
      <p role="status">
        {finestG === null
          ? SETTINGS.noFinest
          : SETTINGS.finest(formatQuantity('mass', finestG, { unit: 'g', withUnit: true }))}
      </p>
    </section>
  );
}

function ScaleRow({ scale, called }: { scale: Scale; called: string }) {
  const remove = () =>
    changeKitchen((now) => ({ ...now, scales: now.scales.filter(({ id }) => id !== scale.id) }));
  return (
    <fieldset class="probe">
      <legend>{called}</legend>
      <div class="fields">
        <TextBox
          label={SETTINGS.scaleName}
          hint={SETTINGS.scaleNameHint}
          text={scale.name}
          onText={(name) => changeScale(scale.id, { name })}
        />
        <NumberBox
          label={SETTINGS.scaleStep}
          kind="mass"
          gramsOnly
          range={RANGE_G}
          entry={scale.step}
          onEntry={(step) => changeScale(scale.id, { step })}
          hint={SETTINGS.scaleStepHint}
        />
      </div>
      <p class="buttons">
        <button type="button" onClick={remove}>
          {SETTINGS.remove(called)}
        </button>
      </p>
    </fieldset>
  );
}
