import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import * as say from '#words/records-desk/RecordsDesk.ts';
import type { DeskLinks } from './desk-links.ts';

/** Batches out of this device and into it. The parts are fetched once the page stands. */
export default function RecordsDesk({ links }: { links: DeskLinks }) {
  const [Parts, setParts] = useState<{ Desk: ComponentType<{ links: DeskLinks }> } | null>(null);
  const [failure, setFailure] = useState('');
  useEffect(() => {
    import('./desk.tsx').then(setParts, (error) => setFailure(String(error)));
  }, []);
  return (
    <div class="worksheet" data-desk={Parts ? 'open' : 'waking'}>
      {Parts ? (
        <Parts.Desk links={links} />
      ) : (
        <p class="not-yet" role="status">
          {failure ? say.pageCouldNotFetchedWholeLoad(failure) : say.opening}
        </p>
      )}
    </div>
  );
}
