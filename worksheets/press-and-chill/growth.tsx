import type { SetGrowth } from '@larderwright/calc/growth';
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
        if (logs.length === 0) return <p class="say">No probe yet.</p>;
        return (
          <>
            {logs.map((log) => {
              const which = [
                log.number > 1 ? `Cooling ${log.number}` : '',
                logs.length > 1 ? (names.get(log.logId) ?? '') : '',
              ].filter(Boolean);
              return (
                <div key={`${log.number} ${log.logId}`}>
                  {which.length > 0 ? <h3>{which.join(', ')}</h3> : null}
                  {log.doubt === null ? (
                    <SetTable sets={log.sets} ended={log.ended} />
                  ) : (
                    <p class="answer-missing">Cannot tell: {GROWTH_DOUBT_WORDS[log.doubt]}</p>
                  )}
                </div>
              );
            })}
            <div class="answers">
              <Answer
                label="Listeria monocytogenes in the cooling"
                value={null}
                missing="Cannot tell: its published rates are for 0 to 12 °C and 2 to 25 °C, and the core passes above both"
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
        Clostridium perfringens from spores,{' '}
        {ended ? 'over the whole cooling' : 'SO FAR: the core is still warm'}, in tenfolds. The United States
        standard is no more than one.
      </caption>
      <thead>
        <tr>
          <th scope="col">Measured in</th>
          <th scope="col">Without lag</th>
          <th scope="col">With lag</th>
        </tr>
      </thead>
      <tbody>
        {sets.map(({ set, withoutLag, withLag }) => (
          <tr key={set.id}>
            <th scope="row">{GROWTH_FOOD_WORDS[set.id]}</th>
            <td data-head="Without lag">
              {logsText(withoutLag.asRead)}, at most {logsText(withoutLag.most)}
            </td>
            <td data-head="With lag">
              {logsText(withLag.asRead)}, at most {logsText(withLag.most)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
