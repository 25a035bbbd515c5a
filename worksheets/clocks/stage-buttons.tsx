import type { ProcessStep, StepKind } from '@larderwright/calc/process';
import { changeStep, FIRST } from '../readings/edits.ts';
import { benchNow } from '../state/bench-clock.ts';
import { $batch } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { CLOCKS, STAGE_NAMES } from '../words/clocks.ts';

/** The next thing a hand can do with the stages: end what runs, begin what comes next. It is written into the record. */
export function StageButtons({ kinds }: { kinds: readonly StepKind[] }) {
  const steps = useShared($batch).process.steps.filter(({ kind }) => kinds.includes(kind));
  const first = kinds[0];
  const running = steps.filter(({ startedAt, endedAt }) => startedAt !== null && endedAt === null);
  const next = steps.find(({ startedAt }) => startedAt === null);
  const offered: Pick<ProcessStep, 'id' | 'kind'> | undefined =
    next ?? (steps.length === 0 && first ? { id: FIRST, kind: first } : undefined);
  return (
    <p class="buttons">
      {running.map(({ id, kind }) => (
        <button key={id} type="button" onClick={() => changeStep(id, kind, { endedAt: benchNow() })}>
          {CLOCKS.end(STAGE_NAMES[kind])}
        </button>
      ))}
      {offered ? (
        <button type="button" onClick={() => changeStep(offered.id, offered.kind, { startedAt: benchNow() })}>
          {CLOCKS.begin(STAGE_NAMES[offered.kind])}
        </button>
      ) : null}
    </p>
  );
}
