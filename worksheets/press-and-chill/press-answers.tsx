import type { PressBand } from '@larderwright/calc/press';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/press-and-chill/press-answers.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { useAt, useShared } from '../state/use-shared.ts';
import { $chill } from './computed.ts';

function bandText({ lowKPa, highKPa, springBox }: PressBand): string {
  if (highKPa === 0) return say.notPressed;
  return say.toKpa(lowKPa, highKPa, springBox ? say.inARatedBox : '');
}

function bandMore({ coreC, hours }: PressBand): string {
  const core = coreC === null ? '' : say.putOnWhenTheCoreIs(coreC[0], coreC[1]);
  const time = hours === null ? '' : say.forH(hours[0] === hours[1] ? hours[0] : say.to(hours[0], hours[1]));
  return say.doNotHoldUpChillCommon(core, time);
}

/** Load to pressure and back, beside what is usual for the product. */
export function PressAnswers() {
  const hasFamily = useAt('formula.familyId') !== null;
  return (
    <Computed of={useShared($chill)}>
      {({ press }) => (
        <div class="answers">
          <Answer
            label={say.thisLoadPressesWith}
            value={press.pressureKPa === null ? null : `${fixedText(press.pressureKPa, 2)} kPa`}
            missing={say.writeTheBoardAndTheLoad}
            worked={
              <p>
                {say.load980665MSArea(
                  press.loadKg !== null && press.boardAreaMm2 !== null && press.pressureKPa !== null
                    ? say.kg980665CmKpa(
                        fixedText(press.loadKg, 2),
                        fixedText(press.boardAreaMm2 / 100, 0),
                        fixedText(press.pressureKPa, 2),
                      )
                    : '',
                )}
              </p>
            }
          />
          <Answer
            label={say.loadForThePressureWanted}
            value={press.loadForTargetKg === null ? null : `${fixedText(press.loadForTargetKg, 2)} kg`}
            missing={say.writeTheBoardAndThePressure}
            worked={<p>{say.pressureWantedAreaBoard980665}</p>}
          />
          <Answer
            label={say.usualForThisProduct}
            value={press.band ? bandText(press.band) : null}
            missing={hasFamily ? say.nothingUsualProductFamily : say.chooseProductFamilyBatch}
            worked={<p>{say.habitTrainedKitchensFamily}</p>}
          >
            {press.band && press.band.highKPa > 0 ? <p>{bandMore(press.band)}</p> : null}
          </Answer>
        </div>
      )}
    </Computed>
  );
}
