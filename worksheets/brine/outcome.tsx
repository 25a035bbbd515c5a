import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/brine/outcome.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { dayWords } from '../parts/day-words.ts';
import { gramsText, percentText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { CureTimes } from '../whole-muscle/cure-times.tsx';
import { stepText } from '../whole-muscle/planned.ts';
import { $brine } from './computed.ts';
import { ScaleRows } from './scale-rows.tsx';

/** How strong the brine on the bench is. */
export function Strength() {
  return (
    <Computed of={useShared($brine)}>
      {({ values: { brineSaltFraction, pickleG } }) =>
        brineSaltFraction === null ? (
          <p class="not-yet">{say.cannotTellWaterSaltCuringSalt}</p>
        ) : (
          <ScaleRows
            saltFraction={brineSaltFraction}
            caption={say.thisBrine(pickleG === null ? '' : say.inAll(gramsText(pickleG)))}
          />
        )
      }
    </Computed>
  );
}

/** Brine to inject, and the weights to inject to. */
export function PumpAnswers() {
  return (
    <Computed of={useShared($brine)}>
      {({ values, slice: { method } }) =>
        method !== 'inject' && method !== 'inject-cover' ? null : (
          <div class="answers">
            <Answer
              label={say.brineToInjectIntoAllThe}
              value={values.injectG === null ? null : stepText(values.injectG)}
              worked={<p>{say.meatShareInjectedBrineNeedles}</p>}
            />
            <Answer
              label={say.injectUntilItAllWeighs}
              value={values.targetMassG === null ? null : stepText(values.targetMassG)}
              worked={<p>{say.meat1ShareInjectedDerived}</p>}
            />
            <Answer
              label={say.drainedItShouldWeigh}
              value={values.expectedMassG === null ? null : stepText(values.expectedMassG)}
              worked={<p>{say.meat1ShareInjectedShareStays}</p>}
            />
            {values.isPumpWeighed && values.pumpFraction !== null ? (
              <Answer
                label={say.pumpedAsWeighed}
                value={percentText(values.pumpFraction, 1)}
                worked={<p>{say.weightAfterNeedlesGreenWeight}</p>}
              />
            ) : null}
          </div>
        )
      }
    </Computed>
  );
}

/** Salt in the meat, on its water, the water activity it gives, and the days it takes. */
export function Outcome() {
  return (
    <Computed of={useShared($brine)}>
      {({ values, slice: { method } }) => {
        const { salt, waterActivity, time, isTimed } = values;
        const missing = isTimed ? say.cannotTellBrineStoppedClockNot : say.cannotTellMeatWaterBrineSalt;
        return (
          <>
            <div class="answers">
              <Answer
                label={say.saltInTheMeatAtThe}
                value={salt === null ? null : percentText(salt.saltOnMeatFraction, 2)}
                missing={missing}
                worked={
                  <p>
                    {say.saltWaterMeatAllWaterMeat(
                      salt === null ? '' : say.ofSaltInTheMeat(gramsText(salt.saltInMeat)),
                    )}
                  </p>
                }
              />
              <Answer
                label={say.saltOnItsWater}
                value={salt === null ? null : percentText(salt.waterPhaseFraction, 2)}
                missing={missing}
                worked={<p>{say.saltSaltAllWaterSameInside}</p>}
              />
              <Answer
                label={say.waterActivityEstimated}
                value={
                  waterActivity === null
                    ? null
                    : say.to(fixedText(waterActivity.low, 3), fixedText(waterActivity.high, 3, 'up'))
                }
                missing={missing}
                worked={<p>{say.saltAloneFormsPitzerMayorga}</p>}
              />
            </div>
            {method === 'inject' ? null : (
              <div class="answers">
                <CureTimes time={time} {...(method === 'inject-cover' ? { label: say.withoutNeedles } : {})}>
                  {method === 'inject-cover' ? <p>{say.needlesBringBrineCoreOnceDays}</p> : null}
                  {values.readyFrom ? <p>{say.byTheTimeYouWroteOut(dayWords(values.readyFrom))}</p> : null}
                </CureTimes>
              </div>
            )}
          </>
        );
      }}
    </Computed>
  );
}
