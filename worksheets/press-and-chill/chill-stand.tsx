import * as say from '#words/press-and-chill/chill-stand.ts';
import { Computed } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { chillStandLine, nextDeadlineWords } from '../words/chill-stand.ts';
import { wordsOf } from '../words/index.ts';
import { $chill } from './computed.ts';

const STATE_WORD = { pass: say.pass, fail: say.fail, 'cannot-tell': say.cannotTell } as const;

/** Where the cooling stands and by when to act, in words that are read from across the kitchen. */
export function ChillStandPanel() {
  return (
    <Computed of={useShared($chill)}>
      {({ stand, chart }) => {
        const title = stand.verdict ? wordsOf(stand.verdict.reason, stand.verdict.params).title : '';
        const last = chart.series.flatMap(({ points }) => points.at(-1)?.atMs ?? []);
        const next = nextDeadlineWords(stand, chart.offsetMin, last.length > 0 ? Math.max(...last) : null);
        return (
          <div class="stand" data-state={stand.state} data-kind={stand.kind}>
            <div aria-live="polite" aria-atomic="true">
              <p class="stand-line">
                <span class="stand-word">{STATE_WORD[stand.state]}</span>{' '}
                <span>{chillStandLine(stand, title)}</span>
              </p>
              {next ? <p class="stand-clock">{next}</p> : null}
            </div>
          </div>
        );
      }}
    </Computed>
  );
}
