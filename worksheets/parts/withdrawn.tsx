import { withdrawalsFor } from '@larderwright/calc/sources';
import { useContext, useEffect } from 'preact/hooks';
import * as say from '#words/parts/withdrawn.ts';
import { nowIso } from '../state/clock.ts';
import { $limits } from '../state/limits.ts';
import { $batch } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { watchLimits } from '../state/watch-limits.ts';
import { PLAIN_HTTP } from '../words/plain-http.ts';
import { STANDING_TEXT, standingWords } from '../words/standing.ts';
import { Links } from './links.ts';

const DAY_MS = 86_400_000;
/** A device that has not heard for so long says so. House rule. */
const DAYS_UNHEARD = 7;

/** On every worksheet: a stop for each rule set of the batch that was withdrawn, as soon as it is known. */
export function Withdrawn() {
  const { limitsStanding } = useContext(Links);
  const batch = useShared($batch);
  const heard = useShared($limits);
  useEffect(() => watchLimits(limitsStanding), [limitsStanding]);
  if (!heard) return null;
  const stops = withdrawalsFor(batch, heard.standing.withdrawn);
  const { askedAt } = heard;
  const isUnheard =
    heard.failed && (askedAt === null || Date.parse(nowIso()) - Date.parse(askedAt) > DAYS_UNHEARD * DAY_MS);
  return (
    <>
      {stops.map((withdrawal) => {
        const { title, body } = standingWords['limits.withdrawn']({ ...withdrawal });
        return (
          <div
            class="finding limits-withdrawn"
            data-severity="stop"
            role="alert"
            key={`${withdrawal.stage} ${withdrawal.ruleSetId}`}
          >
            <p>
              <strong class="finding-word">{say.stop}</strong> <strong>{title}</strong>
            </p>
            <p>{body}</p>
          </div>
        );
      })}
      {isSecureContext ? null : <p class="bench-line">{PLAIN_HTTP}</p>}
      {isUnheard ? <p class="bench-line">{STANDING_TEXT.unchecked(askedAt?.slice(0, 10) ?? null)}</p> : null}
    </>
  );
}
