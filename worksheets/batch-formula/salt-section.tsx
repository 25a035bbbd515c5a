import * as say from '#words/batch-formula/salt-section.ts';
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
      {({ values: { mix, finished }, isSaltElsewhere }) =>
        isSaltElsewhere ? (
          <p class="say">{say.reckonedElsewhere}</p>
        ) : (
          <>
            <SaltSources salt={mix.salt} totalG={mix.totalG} />
            <div class="answers">
              <Answer
                label={say.saltOnTheWaterOfThe}
                value={mix.saltOnWaterFraction === null ? null : percentText(mix.saltOnWaterFraction)}
                missing={
                  mix.saltOnWaterMinFraction === null
                    ? say.cannotTellSaltWaterNotKnown
                    : say.cannotTellAtLeast(percentText(mix.saltOnWaterMinFraction))
                }
                worked={
                  <p>
                    {say.whatBacteriaMeetSaltWholeMix(formulaWorkings.saltOnWater)}
                    {mix.salt.grams === null || mix.water.grams === null
                      ? null
                      : say.here(mix.salt.grams.toFixed(1), mix.water.grams.toFixed(0))}
                  </p>
                }
              />
              {finished === null ? null : (
                <Answer
                  label={say.saltInTheFinishedSliceAbout}
                  value={finished.saltFraction === null ? null : percentText(finished.saltFraction, 2)}
                  missing={say.cannotTellSaltIngredientNot}
                  worked={
                    <p>
                      {say.hereWentCameOutLessDerived(
                        formulaWorkings.finishedSalt,
                        gramsText(finished.ingoingG),
                        gramsText(finished.finishedG),
                        percentText(finished.lossFraction),
                      )}
                    </p>
                  }
                />
              )}
            </div>
          </>
        )
      }
    </Computed>
  );
}
