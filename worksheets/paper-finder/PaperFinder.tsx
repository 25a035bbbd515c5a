import { useEffect, useState } from 'preact/hooks';
import type { Found } from './find-record.ts';

interface PaperFinderProps {
  /** Where a batch on the bench is looked at. */
  sheet: string;
  /** Where a file of batches is brought in. */
  desk: string;
}

/** Finds the record that a printed sheet was made from, by the code on it. */
export default function PaperFinder({ sheet, desk }: PaperFinderProps) {
  const [found, setFound] = useState<Found | null>(null);
  const [failure, setFailure] = useState('');
  useEffect(() => {
    const look = async () => {
      try {
        const { findRecord } = await import('./find-record.ts');
        const next = await findRecord(location.hash.slice(1));
        setFound(next);
        // The record is the one on the paper: nothing to read here.
        if (next.state === 'same') location.replace(sheet);
      } catch (error) {
        setFailure(error instanceof Error ? error.message : String(error));
      }
    };
    void look();
    const again = () => void look();
    addEventListener('hashchange', again);
    return () => removeEventListener('hashchange', again);
  }, [sheet]);

  return (
    <div class="worksheet" data-found={found?.state ?? 'looking'}>
      {failure ? (
        <div class="finding" data-severity="caution" role="alert">
          <p>This device does not let the page at its batches ({failure}).</p>
        </div>
      ) : found === null ? (
        <p class="not-yet" role="status">
          Looking for the record on this device …
        </p>
      ) : (
        <Says found={found} sheet={sheet} desk={desk} />
      )}
    </div>
  );
}

function Says({ found, sheet, desk }: PaperFinderProps & { found: Found }) {
  switch (found.state) {
    case 'no-code':
      return (
        <p role="status">
          No sheet was named. Point the camera of this device at the square code on a printed sheet, and open
          what it reads.
        </p>
      );
    case 'not-here':
      return (
        <div role="status">
          <p>
            <strong>The record of this sheet is not on this device.</strong> Batches stay where they were
            typed. Scan the code with the device the sheet was printed from, or{' '}
            <a href={desk}>bring the record in</a> from a file.
          </p>
          <p>
            Record {found.id}, check {found.sum} on the paper.
          </p>
        </div>
      );
    case 'unreadable':
      return (
        <div class="finding" data-severity="caution" role="alert">
          <p>The record of this sheet is on this device, but it cannot be read. It was not changed.</p>
        </div>
      );
    case 'same':
      return (
        <p role="status">
          {found.title} is on the bench, as it was printed. <a href={sheet}>Open the batch sheet</a>
        </p>
      );
    case 'changed':
      return (
        <div class="finding" data-severity="caution" role="alert">
          <p>
            <strong>The record has changed since this sheet was printed.</strong> {found.title} is on the
            bench as it stands now. The paper says check {found.sum}, the record says {found.now}. Where they
            differ, find out which is right before you go by either.
          </p>
          <p>
            <a href={sheet}>Open the batch sheet</a>
          </p>
        </div>
      );
  }
}
