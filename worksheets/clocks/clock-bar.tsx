import { useContext, useEffect } from 'preact/hooks';
import { Links } from '../parts/links.ts';
import { useShared } from '../state/use-shared.ts';
import { CLOCKS, clockWords } from '../words/clocks.ts';
import { hasRunOut } from './clock.ts';
import { Called, ClockTroubles } from './clock-list.tsx';
import { $clocks } from './clock-store.ts';
import { $present, keepTicking } from './ticking.ts';

/** One line at the head of a worksheet while clocks run: the most urgent one, and the way to all of them. */
export function ClockBar() {
  const links = useContext(Links);
  const { clocks } = useShared($clocks);
  const present = useShared($present);
  useEffect(keepTicking, []);
  const [first] = clocks;
  if (!first) return null;
  const { title, state } = clockWords(first, present);
  return (
    <aside class="clock-bar no-print" aria-label={CLOCKS.bar}>
      <p data-out={hasRunOut(first, present) ? 'yes' : undefined}>
        <span class="clock-state">{state}</span> <strong>{title}</strong>
        {first.batch ? <small> {first.batch}</small> : null}
      </p>
      <a href={links.clocks}>{CLOCKS.all(clocks.length)}</a>
      <ClockTroubles />
      <Called />
    </aside>
  );
}
