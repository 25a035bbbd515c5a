import type { ProbeLog } from '@larderwright/calc/process';
import { useState } from 'preact/hooks';
import * as say from '#words/readings/written-log.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { useAt } from '../state/use-shared.ts';
import { FIRST, logName } from './edits.ts';

/** The log that readings are written into, and how to choose another. */
export interface WrittenLog {
  logs: readonly ProbeLog[];
  /** Id to write to: `FIRST` while no log exists. */
  id: string;
  log: ProbeLog | null;
  name: string;
  choose: (id: string) => void;
}

/** Which probe the hand is writing for. The first until another is chosen. */
export function useWrittenLog(): WrittenLog {
  const logs = useAt('process.logs') as readonly ProbeLog[];
  const [chosen, setChosen] = useState('');
  const index = Math.max(
    0,
    logs.findIndex((log) => log.id === chosen),
  );
  const log = logs[index] ?? null;
  return {
    logs,
    id: index === 0 ? FIRST : (log?.id ?? FIRST),
    log,
    name: log ? logName(log, index) : say.probe1,
    choose: setChosen,
  };
}

/** Shown when there are several probes. */
export function LogChoice({ written }: { written: WrittenLog }) {
  if (written.logs.length < 2) return null;
  return (
    <ChoiceField
      label={say.writingForProbe}
      value={written.log?.id ?? ''}
      choices={written.logs.map((log, i) => ({ value: log.id, label: logName(log, i) }))}
      onChoose={written.choose}
    />
  );
}
