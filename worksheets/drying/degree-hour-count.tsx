import { longestHours } from '@larderwright/calc/drying';
import { fixedText } from '@larderwright/calc/quantities';
import { sourceOf } from '@larderwright/calc/sources';
import * as say from '#words/drying/degree-hour-count.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { $drying } from './computed.ts';

/** Degree-hours so far, against the limit of the highest temperature. */
export function DegreeHourCount() {
  const computed = useShared($drying);
  return (
    <Computed of={computed}>
      {({ values: { degreeHours, degreeHourTable }, slice }) => {
        const source = degreeHourTable === null ? null : sourceOf(degreeHourTable.source);
        const longest =
          degreeHours === null || slice.degreeHourRule === null
            ? null
            : longestHours(slice.degreeHourRule, degreeHours.highest);
        const unit = degreeHourTable?.unit ?? 'F';
        return (
          <div class="answers">
            <Answer
              label={say.degreeHoursSoFar}
              value={
                degreeHours === null
                  ? null
                  : say.ofHours(fixedText(degreeHours.total, 0, 'up'), fixedText(degreeHours.limit, 0), unit)
              }
              missing={say.cannotTellChooseRuleWriteEvery}
              worked={
                degreeHours === null || degreeHourTable === null ? (
                  <p>{say.chamberThresholdHoursAddedUp}</p>
                ) : (
                  <>
                    <p>
                      {say.chamberHoursAddedUpOverEvery(
                        degreeHourTable.threshold,
                        unit,
                        fixedText(degreeHours.highest, 1),
                      )}
                    </p>
                    <p>
                      {source?.title}
                      {degreeHourTable.mark === 'memory' ? say.limitsMemoryCheckCurrentText : ''}.
                    </p>
                  </>
                )
              }
            />
            {longest === null || degreeHours === null ? null : (
              <Answer
                label={say.longestTimePh53Highest}
                value={say.hours(longest)}
                worked={<p>{say.limitChamberThresholdCutDown}</p>}
              />
            )}
          </div>
        );
      }}
    </Computed>
  );
}
