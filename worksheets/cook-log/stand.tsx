import * as say from '#words/cook-log/stand.ts';
import { Computed } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { holdUntilWords, probeStandWords, standLine } from '../words/cook-stand.ts';
import { wordsOf } from '../words/index.ts';
import { $cook } from './computed.ts';

const STATE_WORD = { pass: say.pass, fail: say.fail, 'cannot-tell': say.cannotTell } as const;

/** Where the cook stands, in words that are read from across the kitchen. */
export function StandPanel() {
  return (
    <Computed of={useShared($cook)}>
      {({ stand, verdict, chart, names }) => {
        const title = wordsOf(verdict.reason, verdict.params).title;
        const until = holdUntilWords(stand, chart.offsetMin);
        return (
          <div class="stand" data-state={stand.state} data-kind={stand.kind}>
            <div aria-live="polite" aria-atomic="true">
              <p class="stand-line">
                <span class="stand-word">{STATE_WORD[stand.state]}</span>{' '}
                <span>{standLine(stand, title)}</span>
              </p>
              {until ? <p class="stand-clock">{until}</p> : null}
            </div>
            {stand.probes.map((probe) => (
              <p key={probe.logId} class="stand-more">
                {stand.probes.length > 1 ? <strong>{names.get(probe.logId)}: </strong> : null}
                {probeStandWords(probe, chart.offsetMin)}
              </p>
            ))}
          </div>
        );
      }}
    </Computed>
  );
}
