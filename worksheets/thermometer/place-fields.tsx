import type { Finding } from '@larderwright/calc/findings';
import * as say from '#words/thermometer/place-fields.ts';
import { AltitudeField } from '../parts/altitude-field.tsx';
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
        <AltitudeField
          asking="thermometers.altitude"
          hint={say.type0SeaBlankUnknownBoil}
          findings={findings}
        />
        <NumberField
          path="thermometers.pressure"
          label={say.orThePressureHere}
          kind="pressure"
          units={['hPa', 'kPa']}
          range={{ min: 50, max: 110 }}
          hint={say.readKitchenNotReducedSeaLevel}
          findings={at(findings, 'thermometers.pressure')}
        />
        <NumberField
          path="thermometers.tolerance"
          label={say.mayBeOffBy}
          kind="temperature-difference"
          units={['dC', 'dF']}
          range={{ min: 0, max: 5 }}
          hint={say.commonPracticeNoSourcePlanMay}
          findings={at(findings, 'thermometers.tolerance')}
        />
        <NumberField
          path="thermometers.goodFor"
          label={say.aCheckIsGoodFor}
          kind="time"
          units={['d']}
          range={{ min: 0, max: 525_600 }}
          hint={say.neverAfterFallCommonPracticeNo}
          findings={at(findings, 'thermometers.goodFor')}
        />
      </div>
      <div class="answers">
        <Answer
          label={say.waterBoilsHereAt}
          value={boil ? boilText(boil.tempC) : null}
          missing={say.cannotTellNoHeightNoPressure}
          worked={<p>{thermometerWorkings.boil}</p>}
        >
          {boil?.from === 'altitude' ? <p>{say.heightAloneWeatherMovesUp1}</p> : null}
        </Answer>
      </div>
    </>
  );
}
