import { useEffect, useState } from 'preact/hooks';
import * as say from '#words/paper-finder/PaperFinder.ts';
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
          <p>{say.deviceDoesNotLetPageBatches(failure)}</p>
        </div>
      ) : found === null ? (
        <p class="not-yet" role="status">
          {say.lookingRecordDevice}
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
      return <p role="status">{say.noSheetNamedPointCameraDevice}</p>;
    case 'not-here':
      return (
        <div role="status">
          <p>
            <strong>{say.recordSheetNotDevice}</strong>{' '}
            {say.batchesStayWhereTypedScanCode(<a href={desk}>{say.bringTheRecordIn}</a>)}
          </p>
          <p>{say.recordCheckOnThePaper(found.id, found.sum)}</p>
        </div>
      );
    case 'unreadable':
      return (
        <div class="finding" data-severity="caution" role="alert">
          <p>{say.recordSheetDeviceCannotReadNot}</p>
        </div>
      );
    case 'same':
      return (
        <p role="status">
          {say.isOnTheBenchAsIt(found.title)} <a href={sheet}>{say.openTheBatchSheet}</a>
        </p>
      );
    case 'changed':
      return (
        <div class="finding" data-severity="caution" role="alert">
          <p>
            <strong>{say.recordHasChangedSinceSheet}</strong>{' '}
            {say.benchStandsNowPaperSaysCheck(found.title, found.sum, found.now)}
          </p>
          <p>
            <a href={sheet}>{say.openTheBatchSheet}</a>
          </p>
        </div>
      );
  }
}
