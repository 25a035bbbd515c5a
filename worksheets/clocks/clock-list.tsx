import type { ComponentChildren } from 'preact';
import { useContext } from 'preact/hooks';
import { Links } from '../parts/links.ts';
import { useShared } from '../state/use-shared.ts';
import { CLOCKS, clockWords, jumpWords, STAGE_NAMES } from '../words/clocks.ts';
import { type Clock, hasRunOut } from './clock.ts';
import { $clocks, changeClocks } from './clock-store.ts';
import { $called, $present, trustClock } from './ticking.ts';

/** Stages that are ended on the page of the chill. */
const COLD_STAGES: readonly string[] = [STAGE_NAMES.chill, STAGE_NAMES.press];

const stop = (id: string) => changeClocks((clocks) => clocks.filter((clock) => clock.id !== id));

/** Clocks, the most urgent first. `besides` puts what can be done behind each. */
export function ClockList({ clocks, withBatch }: { clocks: readonly Clock[]; withBatch: boolean }) {
  return clocks.length === 0 ? (
    <p class="say">{CLOCKS.none}</p>
  ) : (
    <ul class="clocks-list">
      {clocks.map((clock) => (
        <ClockRow key={clock.id} clock={clock} withBatch={withBatch} />
      ))}
    </ul>
  );
}

function ClockRow({ clock, withBatch }: { clock: Clock; withBatch: boolean }) {
  const { worksheets } = useContext(Links);
  const present = useShared($present);
  const { title, state, moments } = clockWords(clock, present);
  const page = clock.kind === 'limit' || COLD_STAGES.includes(clock.label) ? 'press-and-chill' : 'cook-log';
  return (
    <li class="clock" data-kind={clock.kind} data-out={hasRunOut(clock, present) ? 'yes' : undefined}>
      <span class="clock-state">{state}</span>
      <span class="clock-what">
        <strong>{title}</strong> {moments}
        {withBatch && clock.batch ? <small>{clock.batch}</small> : null}
      </span>
      <Tools>
        {withBatch && clock.batchId ? (
          <a
            class="press"
            href={`${worksheets[page] ?? ''}#batch=${encodeURIComponent(clock.batchId)}`}
            aria-label={`${CLOCKS.open} ${clock.batch || title}`}
          >
            {CLOCKS.open}
          </a>
        ) : null}
        {clock.kind === 'timer' ? (
          <button type="button" onClick={() => stop(clock.id)}>
            {CLOCKS.stop(title)}
          </button>
        ) : null}
      </Tools>
    </li>
  );
}

function Tools({ children }: { children: ComponentChildren }) {
  return <span class="clock-tools">{children}</span>;
}

/** What is wrong with the clocks: the device's own was set, or they are not kept. */
export function ClockTroubles() {
  const { jump } = useShared($present);
  const { notKept } = useShared($clocks);
  return (
    <div aria-live="assertive">
      {jump ? (
        <div class="finding" data-severity="caution">
          <p>{jumpWords(jump)}</p>
          <p class="buttons">
            <button type="button" onClick={trustClock}>
              {CLOCKS.trust}
            </button>
          </p>
        </div>
      ) : null}
      {notKept === null ? null : (
        <div class="finding" data-severity="caution">
          <p>{CLOCKS.notKept(notKept)}</p>
        </div>
      )}
    </div>
  );
}

/** What a clock called out last: spoken to a reader of the screen at its marks, and at no other moment. */
export function Called() {
  return (
    <p class="unseen clock-called" role="status">
      {useShared($called)}
    </p>
  );
}
