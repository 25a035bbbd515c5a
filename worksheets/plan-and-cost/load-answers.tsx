import { useContext } from 'preact/hooks';
import * as say from '#words/plan-and-cost/load-answers.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { Links } from '../parts/links.ts';
import { gramsText, percentText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { $plan } from './computed.ts';

/** What goes into the chiller and the bath at once, and into how many moulds. */
export function LoadAnswers() {
  const links = useContext(Links);
  return (
    <Computed of={useShared($plan)}>
      {({ values: { chiller, bath, moulds, flow }, moulds: fills }) => (
        <>
          <div class="answers">
            <Answer
              label={say.intoTheChillerWarm}
              value={chiller === null ? null : gramsText(chiller.load)}
              missing={say.cannotTellTheFillIsNot}
              worked={<p>{say.wholeRawFillIfNothingHad}</p>}
            >
              {chiller?.runs == null ? null : <p>{runsText(chiller.runs)}</p>}
            </Answer>
            <Answer
              label={say.mouldsInTheBath}
              value={bath === null ? null : `${bath.load}`}
              missing={say.cannotTellMouldsFillNotKnown}
              worked={<p>{say.mouldsFillDividedWhatBathTakes}</p>}
            >
              {bath?.runs == null ? null : <p>{runsText(bath.runs)}</p>}
            </Answer>
            {moulds.map(({ mouldId, needed }, place) => {
              const fill = fills.find(({ id }) => id === mouldId);
              return (
                <Answer
                  key={mouldId}
                  label={moulds.length === 1 ? say.mouldsNeeded : say.mouldsNeededWereAllOfKind(place + 1)}
                  value={
                    needed === null
                      ? null
                      : say.theLastFull(needed.count, percentText(needed.lastFraction, 0))
                  }
                  missing={say.cannotTellMouldFillNotKnown}
                  worked={
                    <p>
                      {say.fillDividedWhatOneMouldTakes}
                      {flow && fill?.fillG != null
                        ? say.here(gramsText(flow.fillG), gramsText(fill.fillG))
                        : null}
                    </p>
                  }
                />
              );
            })}
          </div>
          {fills.length === 0 ? (
            <p class="say">
              {say.noMouldYetToSeeHow(
                <a href={links.worksheets['mould-and-fill']}>{say.measureTheMoulds}</a>,
              )}
            </p>
          ) : null}
        </>
      )}
    </Computed>
  );
}

function runsText(runs: number): string {
  return runs === 1 ? say.inOneRun : say.inRuns(runs);
}
