import { durationWords } from '../parts/clock-text.ts';
import { Computed } from '../parts/computed.tsx';
import { FindingList } from '../parts/finding-list.tsx';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { useShared } from '../state/use-shared.ts';
import { clockBeside } from '../words/chill-stand.ts';
import { limitTemp } from '../words/limit-temp.ts';
import { $chill } from './computed.ts';
import type { LegRow } from './leg-rows.ts';

const STATE_WORD = { pass: 'PASS', fail: 'FAIL', 'cannot-tell': 'CANNOT TELL' } as const;
/** Findings that a field, a row or the deviations show themselves. */
const SHOWN_AT_FIELD =
  /^(?:press\.|deviations|product\.|signOffs|process\.steps\.|process\.coolRuleSetId|process\.logs\.[^.]+\.(?:offset|error|readings\.))/;

/** Every leg of the chosen rule: its latest clock time, what the readings allow, and the verdict. */
export function Legs() {
  return (
    <Computed of={useShared($chill)}>
      {({ legs, verdicts, findings, chart }) => {
        const shown = new Set(legs.map(({ key }) => key));
        return (
          <>
            {legs.length > 0 ? (
              <table class="legs">
                <caption>Legs of the rule. No leg lends time to another.</caption>
                <thead>
                  <tr>
                    <th scope="col">Leg</th>
                    <th scope="col">Latest clock time</th>
                    <th scope="col">Longest the readings allow</th>
                    <th scope="col">By straight lines</th>
                    <th scope="col">Verdict</th>
                  </tr>
                </thead>
                <tbody>
                  {legs.map((row) => (
                    <LegLine key={row.key} row={row} offsetMin={chart.offsetMin} />
                  ))}
                </tbody>
              </table>
            ) : null}
            {verdicts.map((verdict) => (
              <VerdictLine key={verdict.id} verdict={verdict} />
            ))}
            <FindingList findings={findings.filter(({ field = '' }) => !SHOWN_AT_FIELD.test(field))} />
            {shown.size > 0 ? (
              <p class="say">
                Longest the readings allow: last reading above the start to first reading at or below the end,
                the probe’s error on the unkind side. A pass rests on this; straight lines are for
                information.
              </p>
            ) : null}
          </>
        );
      }}
    </Computed>
  );
}

function LegLine({ row, offsetMin }: { row: LegRow; offsetMin: number }) {
  const { leg, verdict, probes, cooling, worstMin, lineMin } = row;
  const from = leg.from === null ? 'End of cooking' : limitTemp(leg.from, 'maximum').text;
  return (
    <tr>
      <th scope="row">
        {cooling > 1 ? `Cooling ${cooling}: ` : ''}
        {from} {'→'} {limitTemp(leg.to, 'maximum').text}
        <br />
        {leg.strict ? 'in less than' : 'within'} {durationWords(leg.maxMin, 'down')}
        {leg.goodMin === undefined ? '' : `; good practice ${durationWords(leg.goodMin, 'down')}`}
      </th>
      <td data-head="Latest clock time">
        {row.latestMs === null ? 'its clock has not started' : <Latest row={row} offsetMin={offsetMin} />}
      </td>
      <td data-head="Longest the readings allow">
        {worstMin === null ? 'not shown' : durationWords(worstMin, 'up')}
      </td>
      <td data-head="By straight lines">{lineMin === null ? 'not shown' : durationWords(lineMin, 'up')}</td>
      <td data-head="Verdict">
        <span class="verdict" data-state={verdict.state}>
          <strong class="verdict-word">{STATE_WORD[verdict.state]}</strong>
        </span>
        {probes.length > 1
          ? probes.map((probe) => (
              <p key={probe.logId} class="leg-probe">
                {probe.name}: {STATE_WORD[probe.state]}
              </p>
            ))
          : null}
      </td>
    </tr>
  );
}

function Latest({ row, offsetMin }: { row: LegRow; offsetMin: number }) {
  const { latestMs, projectedMs } = row;
  if (latestMs === null) return null;
  const floor = Math.floor(latestMs / 60_000) * 60_000;
  return (
    <>
      <strong>{clockBeside(floor, offsetMin, null)}</strong>
      {projectedMs === null ? null : (
        <>
          <br />
          expected {clockBeside(projectedMs, offsetMin, latestMs)}
        </>
      )}
    </>
  );
}
