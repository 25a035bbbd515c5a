import type { SetGrowth } from '@larderwright/calc/growth';
import * as say from '#words/press-and-chill/growth.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { GROWTH_DOUBT_WORDS, GROWTH_FOOD_WORDS, growthWorkings, logsText } from '../words/growth.ts';
import { $chill } from './computed.ts';

/** What the published sets make of the cooling: information, of which no verdict hears. */
export function GrowthInCooling() {
  return (
    <Computed of={useShared($chill)}>
      {({ growth, names }) => {
        const logs = growth.flatMap((cooling) =>
          cooling.logs.map((log) => ({ ...log, number: cooling.number })),
        );
        if (logs.length === 0) return <p class="say">{say.noProbeYet}</p>;
        return (
          <>
            {logs.map((log) => {
              const which = [
                log.number > 1 ? say.cooling2(log.number) : '',
                logs.length > 1 ? (names.get(log.logId) ?? '') : '',
              ].filter(Boolean);
              return (
                <div key={`${log.number} ${log.logId}`}>
                  {which.length > 0 ? <h3>{which.join(', ')}</h3> : null}
                  {log.doubt === null ? (
                    <SetTable sets={log.sets} ended={log.ended} />
                  ) : (
                    <p class="answer-missing">{say.cannotTell2(GROWTH_DOUBT_WORDS[log.doubt])}</p>
                  )}
                </div>
              );
            })}
            <div class="answers">
              <Answer
                label={say.listeriaMonocytogenesCooling}
                value={null}
                missing={say.cannotTellPublishedRates012}
                worked={<p>{growthWorkings.listeria}</p>}
              />
            </div>
          </>
        );
      }}
    </Computed>
  );
}

function SetTable({ sets, ended }: { sets: readonly SetGrowth[]; ended: boolean }) {
  return (
    <table class="across">
      <caption>
        {say.clostridiumPerfringensSpores2(ended ? say.overTheWholeCooling : say.soFarTheCoreIsStill)}
      </caption>
      <thead>
        <tr>
          <th scope="col">{say.measuredIn}</th>
          <th scope="col">{say.withoutLag}</th>
          <th scope="col">{say.withLag}</th>
        </tr>
      </thead>
      <tbody>
        {sets.map(({ set, withoutLag, withLag }) => (
          <tr key={set.id}>
            <th scope="row">{GROWTH_FOOD_WORDS[set.id]}</th>
            <td data-head="Without lag">
              {say.atMost2(logsText(withoutLag.asRead), logsText(withoutLag.most))}
            </td>
            <td data-head="With lag">{say.atMost2(logsText(withLag.asRead), logsText(withLag.most))}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
