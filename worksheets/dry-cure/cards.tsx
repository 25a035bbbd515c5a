import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { CouldNot } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { BagCard } from './bag-card.tsx';
import { $dryCure } from './computed.ts';

/** A card for every bag; an empty one while there is none. */
export function Cards({ paper, standing }: { paper: Paper; standing: string }) {
  const computed = useShared($dryCure);
  if (computed.state === 'failed') return <CouldNot detail={computed.detail} />;
  const cards = computed.state === 'ready' ? computed.value.cards : [];
  if (computed.state !== 'ready' || cards.length === 0) {
    const head = computed.state === 'ready' ? { head: computed.value.head } : {};
    return <BagCard {...head} paper={paper} standing={standing} />;
  }
  return (
    <>
      {cards.map(({ id, bag, stops }) => (
        <BagCard
          key={id}
          head={computed.value.head}
          bag={bag}
          stops={stops}
          paper={paper}
          standing={standing}
        />
      ))}
    </>
  );
}
