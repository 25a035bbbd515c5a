import { useEffect } from 'preact/hooks';
import * as say from '#words/batch-library/BatchLibrary.ts';
import { BlankForm } from '../parts/blank-form.tsx';
import { Links, type SiteLinks } from '../parts/links.ts';
import { Hydrated, useHydrated, useShared } from '../state/use-shared.ts';
import { noticeWords } from '../words/notices.ts';
import { BatchList } from './batch-list.tsx';
import { Drill } from './drill.tsx';
import { Kept } from './kept.tsx';
import { Numbers } from './numbers.tsx';
import { $shelf, followShelf } from './shelf-store.ts';

interface BatchLibraryProps {
  links: SiteLinks;
  /** Address of an empty worksheet. */
  newBatch: string;
  /** The standing note every sheet carries. */
  standing: string;
}

/** Batches: everything this device keeps, found again, copied on, put away and called back. */
export default function BatchLibrary({ links, newBatch, standing }: BatchLibraryProps) {
  const hydrated = useHydrated();
  const shelf = useShared($shelf);
  useEffect(followShelf, []);
  return (
    <Hydrated.Provider value={hydrated}>
      <Links.Provider value={links}>
        <div class="worksheet all-batches" data-shelf={shelf.state}>
          {shelf.state === 'closed' ? (
            <div class="finding" data-severity="caution" role="alert">
              <p>{noticeWords(shelf.notice)}</p>
            </div>
          ) : null}
          <section aria-labelledby="all-batches">
            <h2 id="all-batches">{say.allBatches}</h2>
            {shelf.state === 'open' ? (
              <BatchList batches={shelf.shelf.batches} newBatch={newBatch} />
            ) : (
              <p class="not-yet">
                {shelf.state === 'looking' ? say.lookingAtWhatThisDeviceKeeps : say.whatIsKeptHereCannotBe}
              </p>
            )}
          </section>
          <section aria-labelledby="recall">
            <h2 id="recall" class="no-print">
              {say.findALot}
            </h2>
            {shelf.state === 'open' ? (
              <Drill batches={shelf.shelf.batches} standing={standing} />
            ) : (
              <BlankForm
                caption={say.whereALotWent}
                columns={[say.batch, say.holdsItAs, say.madeOn, say.state, say.whereItWent, say.howMuch]}
                rows={8}
              />
            )}
          </section>
          {shelf.state === 'open' ? (
            <>
              <Numbers />
              <Kept shelf={shelf.shelf} />
            </>
          ) : null}
        </div>
      </Links.Provider>
    </Hydrated.Provider>
  );
}
