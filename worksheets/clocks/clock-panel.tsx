import type { StepKind } from '@larderwright/calc/process';
import { useContext, useEffect } from 'preact/hooks';
import { Example } from '../example/mode.ts';
import { $batch } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { CLOCKS } from '../words/clocks.ts';
import { CallChoices } from './call-choices.tsx';
import { Called, ClockList, ClockTroubles } from './clock-list.tsx';
import { $clocks } from './clock-store.ts';
import { mirrorBench } from './mirror.ts';
import { nameOf } from './of-batch.ts';
import { OwnTimer } from './own-timer.tsx';
import { StageButtons } from './stage-buttons.tsx';
import { keepTicking } from './ticking.ts';

/** The clocks of the batch on the bench: its stages, the limits of its cooling, and steps of a person's own. */
export function ClockPanel({ kinds }: { kinds: readonly StepKind[] }) {
  return useContext(Example) ? <p class="say">{CLOCKS.noExample}</p> : <Panel kinds={kinds} />;
}

function Panel({ kinds }: { kinds: readonly StepKind[] }) {
  const batch = useShared($batch);
  const { clocks } = useShared($clocks);
  useEffect(() => {
    mirrorBench();
    return keepTicking();
  }, []);
  if (batch.demo) return <p class="say">{CLOCKS.noExample}</p>;
  return (
    <div class="clocks">
      <p class="say">{CLOCKS.about}</p>
      <ClockTroubles />
      <ClockList clocks={clocks.filter(({ batchId }) => batchId === batch.id)} withBatch={false} />
      <StageButtons kinds={kinds} />
      <OwnTimer batchId={batch.id} batch={nameOf(batch)} />
      <CallChoices />
      <Called />
    </div>
  );
}
