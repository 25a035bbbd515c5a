import { fixedText } from '@larderwright/calc/quantities';
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
          <p class="not-yet">Cannot tell: water, salt and curing salt are not all known</p>
        ) : (
          <ScaleRows
            saltFraction={brineSaltFraction}
            caption={`This brine${pickleG === null ? '' : `, ${gramsText(pickleG)} in all`}`}
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
              label="Brine to inject into all the meat"
              value={values.injectG === null ? null : stepText(values.injectG)}
              worked={<p>Meat × share injected. Brine for the needles and the hose comes on top. Derived.</p>}
            />
            <Answer
              label="Inject until it all weighs"
              value={values.targetMassG === null ? null : stepText(values.targetMassG)}
              worked={<p>Meat × (1 + share injected). Derived.</p>}
            />
            <Answer
              label="Drained, it should weigh"
              value={values.expectedMassG === null ? null : stepText(values.expectedMassG)}
              worked={<p>Meat × (1 + share injected × share that stays). Derived.</p>}
            />
            {values.isPumpWeighed && values.pumpFraction !== null ? (
              <Answer
                label="Pumped, as weighed"
                value={percentText(values.pumpFraction, 1)}
                worked={<p>(Weight after the needles − green weight) ÷ green weight. Derived.</p>}
              />
            ) : null}
          </div>
        )
      }
    </Computed>
  );
}

const WITHOUT_NEEDLES = 'Days it would take by soaking alone';

/** Salt in the meat, on its water, the water activity it gives, and the days it takes. */
export function Outcome() {
  return (
    <Computed of={useShared($brine)}>
      {({ values, slice: { method } }) => {
        const { salt, waterActivity, time, isTimed } = values;
        const missing = isTimed
          ? 'Cannot tell: this brine is stopped by the clock, not by evening out'
          : 'Cannot tell: meat, its water, the brine and its salt are not all known';
        return (
          <>
            <div class="answers">
              <Answer
                label="Salt in the meat, at the end"
                value={salt === null ? null : percentText(salt.saltOnMeatFraction, 2)}
                missing={missing}
                worked={
                  <p>
                    Salt × water in the meat ÷ all water
                    {salt === null ? '' : `: ${gramsText(salt.saltInMeat)} of salt in the meat`}. The meat
                    holds as much of the salt as it holds of the water. Derived: mass balance; no water is
                    taken to move.
                  </p>
                }
              />
              <Answer
                label="Salt on its water"
                value={salt === null ? null : percentText(salt.waterPhaseFraction, 2)}
                missing={missing}
                worked={
                  <p>Salt ÷ (salt + all water), the same inside and outside. Derived: its definition.</p>
                }
              />
              <Answer
                label="Water activity, estimated"
                value={
                  waterActivity === null
                    ? null
                    : `${fixedText(waterActivity.low, 3)} to ${fixedText(waterActivity.high, 3, 'up')}`
                }
                missing={missing}
                worked={
                  <p>
                    From salt alone, by the forms of Pitzer and Mayorga (1973) and of Resnik and Chirife (both
                    from memory). Plan by the higher one. Only an instrument decides.
                  </p>
                }
              />
            </div>
            {method === 'inject' ? null : (
              <div class="answers">
                <CureTimes time={time} {...(method === 'inject-cover' ? { label: WITHOUT_NEEDLES } : {})}>
                  {method === 'inject-cover' ? (
                    <p>The needles bring brine to the core at once. The days of your plan even it out.</p>
                  ) : null}
                  {values.readyFrom ? (
                    <p>By the time you wrote: out on {dayWords(values.readyFrom)}.</p>
                  ) : null}
                </CureTimes>
              </div>
            )}
          </>
        );
      }}
    </Computed>
  );
}
