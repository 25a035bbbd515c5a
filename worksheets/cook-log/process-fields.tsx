import type { Finding } from '@larderwright/calc/findings';
import { ProbeList } from '../readings/probe-list.tsx';
import { StepList } from '../readings/step-list.tsx';
import { useShared } from '../state/use-shared.ts';
import { $cook } from './computed.ts';

function useFindings(): readonly Finding[] {
  const computed = useShared($cook);
  return computed.state === 'ready' ? computed.value.findings : [];
}

/** Smoke, cook, reheat and chill of this batch. */
export function CookSteps() {
  return <StepList firstKind="cook" findings={useFindings()} />;
}

/** Every probe of the batch with its errors. */
export function CookProbes() {
  return <ProbeList findings={useFindings()} />;
}
