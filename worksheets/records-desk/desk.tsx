import { useCallback, useEffect, useState } from 'preact/hooks';
import * as say from '#words/records-desk/desk.ts';
import { currentId } from '../state/storage.ts';
import { BringIn } from './bring-in.tsx';
import type { DeskLinks } from './desk-links.ts';
import { HandOn } from './hand-on.tsx';
import { readShelf, type Shelf } from './shelf.ts';

/** Both halves of the desk over what lies on this device. */
export function Desk({ links }: { links: DeskLinks }) {
  const [shelf, setShelf] = useState<Shelf | null>(null);
  const [onBench, setOnBench] = useState<string | null>(null);
  const [problem, setProblem] = useState('');
  const look = useCallback(async () => {
    try {
      const [read, current] = await Promise.all([readShelf(), currentId()]);
      setShelf(read);
      setOnBench(current);
      setProblem('');
    } catch (error) {
      setShelf({ batches: [], unreadable: 0, raw: new Map() });
      setProblem(error instanceof Error ? error.message : String(error));
    }
  }, []);
  useEffect(() => void look(), [look]);
  if (!shelf) return <p class="not-yet">{say.lookingThroughThisDevice}</p>;
  return (
    <>
      {problem ? (
        <div class="finding" data-severity="caution" role="alert">
          <p>{say.deviceKeepsNoBatchesDoesNot(problem)}</p>
        </div>
      ) : null}
      <section aria-labelledby="hand-on">
        <h2 id="hand-on">{say.handOn}</h2>
        <HandOn shelf={shelf} onBench={onBench} links={links} />
      </section>
      <section aria-labelledby="bring-in">
        <h2 id="bring-in">{say.bringIn}</h2>
        <BringIn shelf={shelf} sheet={links.sheet} onTaken={look} />
      </section>
    </>
  );
}
