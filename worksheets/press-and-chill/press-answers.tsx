import type { PressBand } from '@larderwright/calc/press';
import { fixedText } from '@larderwright/calc/quantities';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { useAt, useShared } from '../state/use-shared.ts';
import { $chill } from './computed.ts';

function bandText({ lowKPa, highKPa, springBox }: PressBand): string {
  if (highKPa === 0) return 'Not pressed';
  return `${lowKPa} to ${highKPa} kPa${springBox ? ', in a rated box' : ''}`;
}

function bandMore({ coreC, hours }: PressBand): string {
  const core = coreC === null ? '' : `Put on when the core is at ${coreC[0]} to ${coreC[1]} °C. `;
  const time =
    hours === null ? '' : `For ${hours[0] === hours[1] ? hours[0] : `${hours[0]} to ${hours[1]}`} h. `;
  return `${core}${time}Do not hold up the chill for it. Common practice, no source.`;
}

/** Load to pressure and back, beside what is usual for the product. */
export function PressAnswers() {
  const hasFamily = useAt('formula.familyId') !== null;
  return (
    <Computed of={useShared($chill)}>
      {({ press }) => (
        <div class="answers">
          <Answer
            label="This load presses with"
            value={press.pressureKPa === null ? null : `${fixedText(press.pressureKPa, 2)} kPa`}
            missing="Write the board and the load"
            worked={
              <p>
                Load × 9.80665 m/s² ÷ area of the board
                {press.loadKg !== null && press.boardAreaMm2 !== null && press.pressureKPa !== null
                  ? ` = ${fixedText(press.loadKg, 2)} kg × 9.80665 ÷ ${fixedText(press.boardAreaMm2 / 100, 0)} cm² = ${fixedText(press.pressureKPa, 2)} kPa`
                  : ''}
                .
              </p>
            }
          />
          <Answer
            label="Load for the pressure wanted"
            value={press.loadForTargetKg === null ? null : `${fixedText(press.loadForTargetKg, 2)} kg`}
            missing="Write the board and the pressure"
            worked={<p>Pressure wanted × area of the board ÷ 9.80665 m/s². Derived.</p>}
          />
          <Answer
            label="Usual for this product"
            value={press.band ? bandText(press.band) : null}
            missing={
              hasFamily
                ? 'Nothing is usual for this product family'
                : 'Choose the product family on the batch formula'
            }
            worked={<p>A habit of trained kitchens for this family. Common practice, no source.</p>}
          >
            {press.band && press.band.highKPa > 0 ? <p>{bandMore(press.band)}</p> : null}
          </Answer>
        </div>
      )}
    </Computed>
  );
}
