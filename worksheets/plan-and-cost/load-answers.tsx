import { useContext } from 'preact/hooks';
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
              label="Into the chiller, warm"
              value={chiller === null ? null : gramsText(chiller.load)}
              missing="Cannot tell: the fill is not known"
              worked={
                <p>
                  The whole raw fill, as if nothing had cooked out: the safe side. Divided by what the chiller
                  may take, rounded up, it gives the runs. Derived.
                </p>
              }
            >
              {chiller?.runs == null ? null : <p>{runsText(chiller.runs)}</p>}
            </Answer>
            <Answer
              label="Moulds in the bath"
              value={bath === null ? null : `${bath.load}`}
              missing="Cannot tell: moulds or fill are not known"
              worked={<p>Moulds to fill, divided by what the bath takes, rounded up. Derived.</p>}
            >
              {bath?.runs == null ? null : <p>{runsText(bath.runs)}</p>}
            </Answer>
            {moulds.map(({ mouldId, needed }, place) => {
              const fill = fills.find(({ id }) => id === mouldId);
              return (
                <Answer
                  key={mouldId}
                  label={
                    moulds.length === 1 ? 'Moulds needed' : `Moulds needed, were all of kind ${place + 1}`
                  }
                  value={
                    needed === null
                      ? null
                      : `${needed.count}, the last ${percentText(needed.lastFraction, 0)} full`
                  }
                  missing="Cannot tell: the mould or the fill is not known"
                  worked={
                    <p>
                      Fill divided by what one mould takes, rounded up. Derived.
                      {flow && fill?.fillG != null
                        ? ` Here ${gramsText(flow.fillG)} ÷ ${gramsText(fill.fillG)}.`
                        : null}
                    </p>
                  }
                />
              );
            })}
          </div>
          {fills.length === 0 ? (
            <p class="say">
              No mould yet. <a href={links.worksheets['mould-and-fill']}>Measure the moulds</a> to see how
              many it takes.
            </p>
          ) : null}
        </>
      )}
    </Computed>
  );
}

function runsText(runs: number): string {
  return runs === 1 ? 'In one run.' : `In ${runs} runs.`;
}
