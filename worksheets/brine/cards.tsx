import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { CouldNot } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { $brine } from './computed.ts';
import { VatCard } from './vat-card.tsx';

/** The card of the vat; an empty one while there is no batch. */
export function Cards({ paper, standing }: { paper: Paper; standing: string }) {
  const computed = useShared($brine);
  if (computed.state === 'failed') return <CouldNot detail={computed.detail} />;
  if (computed.state !== 'ready') return <VatCard paper={paper} standing={standing} />;
  const { head, vat, stops } = computed.value;
  return <VatCard head={head} vat={vat} stops={stops} paper={paper} standing={standing} />;
}
