import * as say from '#words/thermometer/result.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { useShared } from '../state/use-shared.ts';
import { thermometerWorkings } from '../words/thermometer.ts';
import { $thermometers } from './computed.ts';
import { mustShowText, offsetText } from './figures.ts';

/** What the check of one thermometer comes to. */
export function Result({ id }: { id: string }) {
  return (
    <Computed of={useShared($thermometers)}>
      {({ values, verdicts, limit, atLimit }) => {
        const checked = values.checked.find((one) => one.id === id);
        const verdict = verdicts.find(({ subjectId }) => subjectId === id);
        const here = atLimit.get(id);
        if (!checked || !verdict || !here) return null;
        return (
          <>
            <VerdictLine verdict={verdict} />
            <div class="answers">
              <Answer
                label={say.offInIceAndInBoiling}
                value={
                  checked.iceOffsetC === null && checked.boilOffsetC === null
                    ? null
                    : `${offsetText(checked.iceOffsetC) ?? say.notRead}; ${offsetText(checked.boilOffsetC) ?? say.notRead}`
                }
                missing={say.cannotTellNotRead}
                worked={<p>{thermometerWorkings.offset}</p>}
              />
              <Answer
                label={limit ? say.offAtTheLimit(limit) : say.offAt70C158F}
                value={offsetText(here.offsetC)}
                missing={say.cannotTellNotRead}
                worked={<p>{thermometerWorkings.offset}</p>}
              />
              <Answer
                label={say.itsDisplayMustShow}
                value={here.mustShow ? mustShowText(here.mustShow) : null}
                missing={
                  checked.state === 'pass' ? say.cannotTellErrorNotWrittenDown : say.nothingNoGoodCheck
                }
                worked={<p>{thermometerWorkings.action}</p>}
              >
                {here.logs > 0 ? (
                  <p>
                    {say.ofThisBatchAreJudgedWith(
                      here.logs === 1 ? say.oneLog : say.logs(here.logs),
                      here.logs,
                    )}
                  </p>
                ) : (
                  <p>{say.nameBesideProbeCookLogLog}</p>
                )}
              </Answer>
            </div>
          </>
        );
      }}
    </Computed>
  );
}
