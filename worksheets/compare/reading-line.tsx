import { CouldNot } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { COMPARE_WORDS } from '../words/compare.ts';
import { $reading } from './compare-store.ts';
import type { Figures } from './use-figures.ts';

/** What stands there until the records are read, and what became of those that could not be. */
export function ReadingLine({ figures }: { figures: Figures }) {
  const reading = useShared($reading);
  if (figures.state === 'failed') return <CouldNot detail={figures.detail} />;
  if (figures.state === 'reading')
    return (
      <p class="not-yet" role="status">
        {reading ? COMPARE_WORDS.reading(reading.done, reading.all) : COMPARE_WORDS.looking}
      </p>
    );
  return figures.unreadable > 0 ? <p>{COMPARE_WORDS.unreadable(figures.unreadable)}</p> : null;
}
