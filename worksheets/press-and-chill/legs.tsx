import * as say from '#words/press-and-chill/legs.ts';
import { durationWords } from '../parts/clock-text.ts';
import { Computed } from '../parts/computed.tsx';
import { FindingList } from '../parts/finding-list.tsx';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { useShared } from '../state/use-shared.ts';
import { clockBeside } from '../words/chill-stand.ts';
import { limitTemp } from '../words/limit-temp.ts';
import { $chill } from './computed.ts';
import type { LegRow } from './leg-rows.ts';

const STATE_WORD = { pass: say.pass, fail: say.fail, 'cannot-tell': say.cannotTell } as const;
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
                <caption>{say.legsRuleNoLegLendsTime}</caption>
                <thead>
                  <tr>
                    <th scope="col">{say.leg}</th>
                    <th scope="col">{say.latestClockTime}</th>
                    <th scope="col">{say.longestTheReadingsAllow}</th>
                    <th scope="col">{say.byStraightLines}</th>
                    <th scope="col">{say.verdict}</th>
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
            {shown.size > 0 ? <p class="say">{say.longestReadingsAllowLast}</p> : null}
          </>
        );
      }}
    </Computed>
  );
}

function LegLine({ row, offsetMin }: { row: LegRow; offsetMin: number }) {
  const { leg, verdict, probes, cooling, worstMin, lineMin } = row;
  const from = leg.from === null ? say.endOfCooking : limitTemp(leg.from, 'maximum').text;
  return (
    <tr>
      <th scope="row">
        {cooling > 1 ? say.cooling2(cooling) : ''}
        {from} {'→'} {limitTemp(leg.to, 'maximum').text}
        <br />
        {leg.strict ? say.inLessThan : say.within} {durationWords(leg.maxMin, 'down')}
        {leg.goodMin === undefined ? '' : say.goodPractice2(durationWords(leg.goodMin, 'down'))}
      </th>
      <td data-head="Latest clock time">
        {row.latestMs === null ? say.itsClockHasNotStarted : <Latest row={row} offsetMin={offsetMin} />}
      </td>
      <td data-head="Longest the readings allow">
        {worstMin === null ? say.notShown : durationWords(worstMin, 'up')}
      </td>
      <td data-head="By straight lines">{lineMin === null ? say.notShown : durationWords(lineMin, 'up')}</td>
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
          {say.expected2(clockBeside(projectedMs, offsetMin, latestMs))}
        </>
      )}
    </>
  );
}
