import { Computed } from '../parts/computed.tsx';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { derive } from '../state/derived.ts';
import { useShared } from '../state/use-shared.ts';
import type { CheckLine } from './check-lines.ts';

const $checkLines = derive<ReadonlyMap<string, CheckLine>>(
  async () => (await import('./check-lines.ts')).computeCheckLines,
);

/** The check of the thermometer that a log is judged with. */
export function ProbeCheck({ logId }: { logId: string }) {
  return (
    <Computed of={useShared($checkLines)}>
      {(lines) => {
        const line = lines.get(logId);
        return line ? (
          <>
            <VerdictLine verdict={line.verdict} />
            {line.says ? <p class="say">{line.says}</p> : null}
          </>
        ) : null;
      }}
    </Computed>
  );
}
