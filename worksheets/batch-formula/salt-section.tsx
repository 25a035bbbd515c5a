import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { SaltSources } from '../parts/salt-sources.tsx';
import { useShared } from '../state/use-shared.ts';
import { formulaWorkings } from '../words/formula.ts';
import { $formula } from './computed.ts';

/** Salt from every source, and what it is on the water of the mix. */
export function SaltFigures() {
  return (
    <Computed of={useShared($formula)}>
      {({ values: { mix, finished } }) => (
        <>
          <SaltSources salt={mix.salt} totalG={mix.totalG} />
          <div class="answers">
            <Answer
              label="Salt on the water of the mix"
              value={mix.saltOnWaterFraction === null ? null : percentText(mix.saltOnWaterFraction)}
              missing={
                mix.saltOnWaterMinFraction === null
                  ? 'Cannot tell: salt or water is not known'
                  : `Cannot tell: at least ${percentText(mix.saltOnWaterMinFraction)}`
              }
              worked={
                <p>
                  {formulaWorkings.saltOnWater} It is what bacteria meet; salt on the whole mix says nothing
                  of keeping.
                  {mix.salt.grams === null || mix.water.grams === null
                    ? null
                    : ` Here ${mix.salt.grams.toFixed(1)} ÷ (${mix.salt.grams.toFixed(1)} + ${mix.water.grams.toFixed(0)}).`}
                </p>
              }
            />
            {finished === null ? null : (
              <Answer
                label="Salt in the finished slice, about"
                value={finished.saltFraction === null ? null : percentText(finished.saltFraction, 2)}
                missing="Cannot tell: the salt of an ingredient is not known"
                worked={
                  <p>
                    {formulaWorkings.finishedSalt} Here {gramsText(finished.ingoingG)} went in and{' '}
                    {gramsText(finished.finishedG)} came out, {percentText(finished.lossFraction)} less.
                    Derived: mass balance.
                  </p>
                }
              />
            )}
          </div>
        </>
      )}
    </Computed>
  );
}
