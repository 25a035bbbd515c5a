import { useEffect } from 'preact/hooks';
import { Links, type SiteLinks } from '../parts/links.ts';
import { database } from '../state/database.ts';
import { $life } from '../state/store.ts';
import { Hydrated, useHydrated, useShared } from '../state/use-shared.ts';
import { CLOCKS } from '../words/clocks.ts';
import { CallChoices } from './call-choices.tsx';
import { Called, ClockList, ClockTroubles } from './clock-list.tsx';
import { $clocks, changeClocks } from './clock-store.ts';
import { OwnTimer } from './own-timer.tsx';
import { keepTicking } from './ticking.ts';

/** Takes away the clocks of batches that are no longer on this device. */
async function dropOrphans(): Promise<void> {
  const db = await database();
  const ids = new Set(await db.getAllKeys('batches'));
  changeClocks((clocks) => clocks.filter(({ batchId }) => batchId === '' || ids.has(batchId)));
}

/** Every clock that runs on this device, of whatever batch, the most urgent first. */
export default function Clocks({ links }: { links: SiteLinks }) {
  const hydrated = useHydrated();
  const life = useShared($life);
  const { clocks } = useShared($clocks);
  useEffect(() => {
    $life.set('blank');
    const stop = keepTicking();
    dropOrphans().catch(() => {});
    return stop;
  }, []);
  return (
    <Hydrated.Provider value={hydrated}>
      <Links.Provider value={links}>
        <div class="worksheet clocks" data-life={life}>
          <p class="say">{CLOCKS.about}</p>
          <ClockTroubles />
          <section aria-labelledby="running">
            <h2 id="running">{CLOCKS.running}</h2>
            <ClockList clocks={clocks} withBatch />
          </section>
          <OwnTimer batchId="" batch="" />
          <CallChoices />
          <Called />
        </div>
      </Links.Provider>
    </Hydrated.Provider>
  );
}
