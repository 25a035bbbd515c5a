import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { CouldNot } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { $drying } from './computed.ts';
import { LotCard } from './lot-card.tsx';

/** The card of the lot; an empty one while there is no batch. */
export function Cards({ paper, standing }: { paper: Paper; standing: string }) {
  const computed = useShared($drying);
  if (computed.state === 'failed') return <CouldNot detail={computed.detail} />;
  if (computed.state !== 'ready') return <LotCard paper={paper} standing={standing} />;
  const { head, lot, stops } = computed.value;
  return <LotCard head={head} lot={lot} stops={stops} paper={paper} standing={standing} />;
}
