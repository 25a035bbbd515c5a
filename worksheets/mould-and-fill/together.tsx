import * as say from '#words/mould-and-fill/together.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { gramsText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { $mould } from './computed.ts';

/** The batch the moulds are to hold. */
export function BatchWeight() {
  return (
    <Computed of={useShared($mould)}>
      {({ batchG }) => (
        <Answer
          label={say.weightOfTheBatchByThe}
          value={batchG === null ? null : gramsText(batchG)}
          missing={say.cannotTellFormulaNotComplete}
          worked={<p>{say.everythingGoesIntoBowlAddedUp}</p>}
        />
      )}
    </Computed>
  );
}

/** What all moulds take, against the batch. */
export function Together() {
  return (
    <Computed of={useShared($mould)}>
      {({ values: { capacityG, leftoverG, actualTotalG }, findings, batchG }) => (
        <>
          <div class="answers">
            <Answer
              label={say.allMouldsTake}
              value={capacityG === null ? null : gramsText(capacityG)}
              missing={say.cannotTellMouldNotFully}
              worked={<p>{say.fillEachMouldHowManyAdded}</p>}
            />
            <Answer
              label={leftoverG !== null && leftoverG < 0 ? say.shortOfFullMouldsBy : say.leftOver}
              value={leftoverG === null ? null : gramsText(Math.abs(leftoverG))}
              missing={say.cannotTellFormulaMouldsNot}
              worked={
                <p>
                  {say.testPoachWhatStaysBowlCome(
                    batchG === null || capacityG === null
                      ? say.mixLessWhatAllMouldsTake
                      : say.ofMixLessOfMoulds(gramsText(batchG), gramsText(capacityG)),
                  )}
                </p>
              }
            />
            {actualTotalG === null ? null : (
              <Answer
                label={say.filledSoFarAsWeighed}
                value={gramsText(actualTotalG)}
                worked={<p>{say.whatEachFilledMouldWeighedNet}</p>}
              />
            )}
          </div>
          <FindingList findings={at(findings, 'mould.moulds')} />
        </>
      )}
    </Computed>
  );
}
