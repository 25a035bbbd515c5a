import type { Finding } from '@larderwright/calc/findings';
import { at } from './finding-list.tsx';
import { NumberField } from './number-field.tsx';

/** What the pack of a curing salt declares. It has no default: a guess here is tenfold wrong. */
export function CureStrength({ lineId, findings }: { lineId: string; findings: readonly Finding[] }) {
  const path = `formula.lines.${lineId}.cure`;
  return (
    <div class="fields cure-strength">
      <NumberField
        path={`${path}.nitrite`}
        label="Sodium nitrite in it, by the pack"
        kind="fraction"
        hint="Read it off this very pack. Two curing salts of the same colour can differ tenfold."
        findings={at(findings, `${path}.nitrite`)}
      />
      <NumberField
        path={`${path}.nitrate`}
        label="Nitrate in it, by the pack"
        kind="fraction"
        hint="Type 0 when the pack lists none. Blank is unknown."
        findings={at(findings, `${path}.nitrate`)}
      />
    </div>
  );
}
