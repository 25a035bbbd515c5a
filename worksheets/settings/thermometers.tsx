import type { Thermometer } from '@larderwright/calc/thermometer';
import { useContext } from 'preact/hooks';
import { Links } from '../parts/links.ts';
import { $kitchen, changeKitchen } from '../state/kitchen.ts';
import { useShared } from '../state/use-shared.ts';
import { SETTINGS, shownText } from '../words/settings.ts';

/** The kitchen's thermometers with what their last check showed. */
export function Thermometers() {
  const { worksheets } = useContext(Links);
  const { thermometers } = useShared($kitchen).kitchen;
  return (
    <section aria-labelledby="thermometers">
      <h2 id="thermometers">{SETTINGS.thermometers}</h2>
      <p class="say">{SETTINGS.thermometersAbout}</p>
      {thermometers.length === 0 ? (
        <p>{SETTINGS.noThermometer}</p>
      ) : (
        <ul class="settings-list">
          {thermometers.map((each, index) => (
            <Row
              key={each.id}
              thermometer={each}
              called={each.name.trim() || SETTINGS.unnamed(SETTINGS.thermometer, index + 1)}
            />
          ))}
        </ul>
      )}
      <p class="buttons">
        <a class="press" href={worksheets.thermometer}>
          {SETTINGS.toCheck}
        </a>
      </p>
    </section>
  );
}

function Row({ thermometer, called }: { thermometer: Thermometer; called: string }) {
  const { id, ice, error, checkedOn } = thermometer;
  const remove = () =>
    changeKitchen((now) => ({ ...now, thermometers: now.thermometers.filter((each) => each.id !== id) }));
  const [, inIce, ownError, day] = SETTINGS.thermometerHead;
  return (
    <li>
      <strong>{called}</strong>
      <span>
        {inIce}: {ice.text.trim() ? shownText(ice.text, ice.unit) : SETTINGS.unchecked}
      </span>
      <span>
        {ownError} ±: {error.text.trim() ? shownText(error.text, error.unit.slice(-1)) : SETTINGS.unknown}
      </span>
      <span>
        {day}: {checkedOn || SETTINGS.unchecked}
      </span>
      <button type="button" onClick={remove}>
        {SETTINGS.remove(called)}
      </button>
    </li>
  );
}
