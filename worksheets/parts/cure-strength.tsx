import type { Finding } from '@larderwright/calc/findings';
import * as say from '#words/parts/cure-strength.ts';
import { at } from './finding-list.tsx';
import { NumberField } from './number-field.tsx';

/** What the pack of a curing salt declares. It has no default: a guess here is tenfold wrong. */
export function CureStrength({ lineId, findings }: { lineId: string; findings: readonly Finding[] }) {
  const path = `formula.lines.${lineId}.cure`;
  return (
    <div class="fields cure-strength">
      <NumberField
        path={`${path}.nitrite`}
        label={say.sodiumNitriteInItByThe}
        kind="fraction"
        hint={say.readOffVeryPackTwoCuring}
        findings={at(findings, `${path}.nitrite`)}
      />
      <NumberField
        path={`${path}.nitrate`}
        label={say.nitrateInItByThePack}
        kind="fraction"
        hint={say.type0WhenPackListsNone}
        findings={at(findings, `${path}.nitrate`)}
      />
    </div>
  );
}
