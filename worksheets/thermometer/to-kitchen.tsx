import { takeThermometers } from '@larderwright/calc/kitchen';
import { newThermometerSlice } from '@larderwright/calc/thermometer';
import { useContext, useState } from 'preact/hooks';
import { Links } from '../parts/links.ts';
import { newId } from '../state/clock.ts';
import { $kitchen, changeKitchen, lookAtKitchen } from '../state/kitchen.ts';
import { $batch } from '../state/store.ts';
import { kitchenTroubleWords, TO_KITCHEN } from '../words/settings.ts';

/** Takes the thermometers of this check to the settings, so that the next batch begins with them. */
export function ToKitchen() {
  const { settings } = useContext(Links);
  const [said, setSaid] = useState('');
  const take = () => {
    const slice = $batch.get().thermometers ?? newThermometerSlice();
    const named = slice.thermometers.filter(({ name }) => name.trim() !== '').length;
    if (named === 0) {
      setSaid(TO_KITCHEN.nameless);
      return;
    }
    lookAtKitchen();
    changeKitchen((kitchen) => takeThermometers(kitchen, slice, newId));
    const { trouble } = $kitchen.get();
    setSaid(trouble ? kitchenTroubleWords(trouble) : TO_KITCHEN.taken(named));
  };
  return (
    <>
      <p class="buttons">
        <button type="button" onClick={take}>
          {TO_KITCHEN.button}
        </button>
        <a class="press" href={settings}>
          {TO_KITCHEN.settings}
        </a>
      </p>
      <p role="status">{said}</p>
    </>
  );
}
