import type { Finding } from '@larderwright/calc/findings';
import { Answer } from '../parts/answer.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { useShared } from '../state/use-shared.ts';
import { thermometerWorkings } from '../words/thermometer.ts';
import { $thermometers } from './computed.ts';
import { boilText } from './figures.ts';

/** Where the kitchen stands, and how strict the check is. */
export function PlaceFields({ findings }: { findings: readonly Finding[] }) {
  const computed = useShared($thermometers);
  const boil = computed.state === 'ready' ? computed.value.values.boil : null;
  return (
    <>
      <div class="fields">
        <NumberField
          path="thermometers.altitude"
          label="Height above sea level"
          kind="length"
          units={['m', 'ft']}
          range={{ min: 0, max: 5_500_000 }}
          hint="Type 0 at the sea. Blank: unknown, and the boil is not used."
          findings={at(findings, 'thermometers.altitude')}
        />
        <NumberField
          path="thermometers.pressure"
          label="Or the pressure here"
          kind="pressure"
          units={['hPa', 'kPa']}
          range={{ min: 50, max: 110 }}
          hint="Read in the kitchen, not reduced to sea level. It rules over the height."
          findings={at(findings, 'thermometers.pressure')}
        />
        <NumberField
          path="thermometers.tolerance"
          label="May be off by, ±"
          kind="temperature-difference"
          units={['dC', 'dF']}
          range={{ min: 0, max: 5 }}
          hint="Common practice, no source. Your plan may say less."
          findings={at(findings, 'thermometers.tolerance')}
        />
        <NumberField
          path="thermometers.goodFor"
          label="A check is good for"
          kind="time"
          units={['d']}
          range={{ min: 0, max: 525_600 }}
          hint="And never after a fall. Common practice, no source."
          findings={at(findings, 'thermometers.goodFor')}
        />
      </div>
      <div class="answers">
        <Answer
          label="Water boils here at"
          value={boil ? boilText(boil.tempC) : null}
          missing="Cannot tell: no height and no pressure"
          worked={<p>{thermometerWorkings.boil}</p>}
        >
          {boil?.from === 'altitude' ? <p>By the height alone; weather moves it by up to 1 °C.</p> : null}
        </Answer>
      </div>
    </>
  );
}
