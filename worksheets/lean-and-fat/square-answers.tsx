import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/lean-and-fat/square-answers.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { Needed } from '../parts/needed.tsx';
import { gramsText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { blendFigureNames, blendWorkings } from '../words/blend.ts';
import { moneyText } from '../words/money.ts';
import { $blend } from './computed.ts';
import { blendFieldName } from './field-names.ts';
import { MakeupAnswers } from './makeup-answers.tsx';
import { StandardVerdicts } from './sold-under.tsx';
import { SquareDrawing } from './square-drawing.tsx';
import { WriteBlend } from './write-blend.tsx';

/** Two materials to one fat content. */
export function SquareAnswers() {
  return (
    <Computed of={useShared($blend)}>
      {({ values, findings, verdicts, missing, slice, currency }) => {
        const { square, squareMasses, squareMakeup, squareCost } = values;
        const lineOf = (id: string | null) => values.lines.find(({ materialId }) => materialId === id);
        const [a, b] = [lineOf(slice.freeA), lineOf(slice.freeB)];
        const nameOf = (id: string) => lineOf(id)?.name || say.unnamedMaterial;
        const locked = square?.ok ? squareMasses.length > 2 : false;
        return (
          <>
            <Needed
              missing={missing}
              figures={{ 'blend.square': blendFigureNames['blend.square'] ?? say.theSquare }}
              nameOf={(field) => blendFieldName(field, slice)}
            />
            {square?.ok && a?.fatFraction != null && b?.fatFraction != null ? (
              <>
                <SquareDrawing
                  nameA={a.name}
                  nameB={b.name}
                  fatA={a.fatFraction}
                  fatB={b.fatFraction}
                  target={square.freeTargetFraction}
                />
                <div class="answers">
                  {squareMasses.map(({ materialId, massG }) => (
                    <Answer
                      key={materialId}
                      label={nameOf(materialId)}
                      value={gramsText(massG)}
                      worked={
                        <p>
                          {say.derivedMassBalanceSquareCommon(
                            blendWorkings.square,
                            locked ? blendWorkings.lockedSquare : null,
                          )}
                        </p>
                      }
                    />
                  ))}
                  <Answer
                    label={say.sharesOfTheTwo}
                    value={`${fixedText(square.fractionOfA * 100, 2)} : ${fixedText(square.fractionOfB * 100, 2)}`}
                    worked={<p>{say.derived(blendWorkings.square)}</p>}
                  />
                  <MakeupAnswers makeup={squareMakeup} />
                  <Answer
                    label={say.costOfTheBlend}
                    value={squareCost === null ? null : moneyText(squareCost, currency)}
                    missing={say.notKnownAPriceIsMissing}
                    worked={<p>{say.eachWeightTimesPriceAddedUp}</p>}
                  />
                </div>
                <StandardVerdicts verdicts={verdicts} />
                <WriteBlend masses={squareMasses} what={say.theSquare} />
              </>
            ) : null}
            <FindingList findings={at(findings, 'blend.materials')} />
          </>
        );
      }}
    </Computed>
  );
}
