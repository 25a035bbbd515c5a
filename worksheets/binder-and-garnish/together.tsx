import * as say from '#words/binder-and-garnish/together.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { Needed } from '../parts/needed.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { WriteOwnLines } from '../parts/write-own-lines.tsx';
import { useShared } from '../state/use-shared.ts';
import { binderFigureNames, binderWorkings } from '../words/binder.ts';
import { $binder } from './computed.ts';
import { binderFieldName } from './field-names.ts';
import { BINDER_LINE } from './to-formula.ts';

const CARRIED = <p>{say.compositionTableEachRowSource(binderWorkings.carried)}</p>;

/** Salt, water and allergens brought in, the shares, and the way into the formula. */
export function Together() {
  return (
    <Computed of={useShared($binder)}>
      {({ slice, values, findings, missing, lines }) => {
        const { carried, garnishFraction, eggFraction, garnish } = values;
        return (
          <>
            <Needed
              missing={missing}
              figures={binderFigureNames}
              nameOf={(path) => binderFieldName(path, slice)}
            />
            <div class="answers">
              <Answer
                label={say.saltTheyBring}
                value={carried.saltG === null ? null : gramsText(carried.saltG)}
                missing={say.cannotTellWeightSaltSomething}
                worked={CARRIED}
              />
              <Answer
                label={say.waterTheyBring}
                value={carried.waterG === null ? null : gramsText(carried.waterG)}
                missing={say.cannotTellWeightWaterSomething}
                worked={CARRIED}
              />
              {garnish.length === 0 ? null : (
                <Answer
                  label={say.allGarnishOfTheWholeMix}
                  value={garnishFraction === null ? null : percentText(garnishFraction, 1)}
                  worked={<p>{say.garnishReadyFoldDivided}</p>}
                />
              )}
              {values.eggG ? (
                <Answer
                  label={say.eggOfTheWholeMix}
                  value={eggFraction === null ? null : percentText(eggFraction, 1)}
                  worked={<p>{say.eggDividedEverythingBowl}</p>}
                />
              ) : null}
            </div>
            <FindingList
              findings={[...at(findings, 'binder.garnish'), ...at(findings, 'binder.panadeParts')]}
            />
            <WriteOwnLines
              lines={lines}
              prefix={BINDER_LINE}
              label={say.writeTheseLinesIntoTheFormula}
              hint={say.linesPageWroteBeforeReplaced}
              done={say.bindersGarnishStandFormula}
            />
          </>
        );
      }}
    </Computed>
  );
}
