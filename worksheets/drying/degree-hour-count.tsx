import { longestHours } from '@larderwright/calc/drying';
import { fixedText } from '@larderwright/calc/quantities';
import { sourceOf } from '@larderwright/calc/sources';
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
              label="Degree-hours so far"
              value={
                degreeHours === null
                  ? null
                  : `${fixedText(degreeHours.total, 0, 'up')} of ${fixedText(degreeHours.limit, 0)} °${unit} hours`
              }
              missing="Cannot tell: choose the rule, and write every stretch whole"
              worked={
                degreeHours === null || degreeHourTable === null ? (
                  <p>
                    (Chamber − threshold) × hours, added up over every stretch until pH 5.3; the highest
                    temperature sets the limit. Which threshold and limit: by the rule you choose.
                  </p>
                ) : (
                  <>
                    <p>
                      (Chamber − {degreeHourTable.threshold} °{unit}) × hours, added up over every stretch
                      until pH 5.3. A stretch below the threshold counts nothing and takes nothing off. The
                      highest temperature, {fixedText(degreeHours.highest, 1)} °{unit}, sets the limit.
                    </p>
                    <p>
                      {source?.title}
                      {degreeHourTable.mark === 'memory'
                        ? '; the limits are from memory, check the current text'
                        : ''}
                      .
                    </p>
                  </>
                )
              }
            />
            {longest === null || degreeHours === null ? null : (
              <Answer
                label="Longest time to pH 5.3 at the highest of them"
                value={`${longest} hours`}
                worked={
                  <p>Limit ÷ (chamber − threshold), cut down to whole hours. Derived from the same table.</p>
                }
              />
            )}
          </div>
        );
      }}
    </Computed>
  );
}
