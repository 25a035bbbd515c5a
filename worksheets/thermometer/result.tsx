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
                label="Off in ice, and in boiling water"
                value={
                  checked.iceOffsetC === null && checked.boilOffsetC === null
                    ? null
                    : `${offsetText(checked.iceOffsetC) ?? 'not read'}; ${offsetText(checked.boilOffsetC) ?? 'not read'}`
                }
                missing="Cannot tell: not read"
                worked={<p>{thermometerWorkings.offset}</p>}
              />
              <Answer
                label={limit ? `Off at the limit, ${limit}` : 'Off at 70 °C (158 °F), no limit being named'}
                value={offsetText(here.offsetC)}
                missing="Cannot tell: not read"
                worked={<p>{thermometerWorkings.offset}</p>}
              />
              <Answer
                label="Its display must show"
                value={here.mustShow ? mustShowText(here.mustShow) : null}
                missing={
                  checked.state === 'pass'
                    ? 'Cannot tell: its error is not written down'
                    : 'Nothing: no good check'
                }
                worked={<p>{thermometerWorkings.action}</p>}
              >
                {here.logs > 0 ? (
                  <p>
                    {here.logs === 1 ? 'One log' : `${here.logs} logs`} of this batch{' '}
                    {here.logs === 1 ? 'is' : 'are'} judged with it.
                  </p>
                ) : (
                  <p>Name it beside a probe on the cook log, and its log is judged with it.</p>
                )}
              </Answer>
            </div>
          </>
        );
      }}
    </Computed>
  );
}
