/**
 * Asks the site which limits were withdrawn: when a batch is opened, when the network comes back, when the page is
 * looked at again, and every quarter of an hour. What was heard last is kept, so that a withdrawal outlives a failed
 * question; a list older than the one known is not believed.
 */
import { BUILT_STANDING, laterStanding, readStanding } from '@larderwright/calc/sources';
import { nowIso } from './clock.ts';
import { $limits, type LimitsHeard } from './limits.ts';

const KEY = 'larderwright.limits';
const EVERY_MS = 15 * 60_000;
/** A list is some hundred bytes; more is not one. */
const LONGEST = 200_000;

function kept(): LimitsHeard {
  try {
    const { standing, askedAt }: { standing?: unknown; askedAt?: unknown } = JSON.parse(
      localStorage.getItem(KEY) ?? '{}',
    );
    const read = readStanding(standing);
    if (read)
      return {
        standing: laterStanding(BUILT_STANDING, read),
        askedAt: typeof askedAt === 'string' ? askedAt : null,
        failed: false,
      };
  } catch {
    // Nothing kept, or nothing that can be read: the list of this edition stands.
  }
  return { standing: BUILT_STANDING, askedAt: null, failed: false };
}

function keep({ standing, askedAt }: LimitsHeard): void {
  try {
    localStorage.setItem(KEY, JSON.stringify({ standing, askedAt }));
  } catch {
    // It lasts as long as the page.
  }
}

async function ask(address: string): Promise<void> {
  const known = $limits.get() ?? kept();
  try {
    const response = await fetch(address, { cache: 'no-cache' });
    const text = response.ok ? await response.text() : '';
    // The service worker answers without the network, and says so.
    const isFresh = response.headers.get('x-larderwright-kept') === null;
    const heard = text.length > LONGEST ? null : readStanding(JSON.parse(text));
    if (!heard) throw new Error('no list');
    const next = {
      standing: laterStanding(known.standing, heard),
      askedAt: isFresh ? nowIso() : known.askedAt,
      failed: !isFresh,
    };
    $limits.set(next);
    keep(next);
  } catch {
    $limits.set({ ...known, failed: true });
  }
}

let watching = false;

/** Starts to ask, once a page. */
export function watchLimits(address: string): void {
  if (watching) return;
  watching = true;
  $limits.set(kept());
  void ask(address);
  addEventListener('online', () => void ask(address));
  addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void ask(address);
  });
  setInterval(() => void ask(address), EVERY_MS);
}
