import type { Finding } from '@larderwright/calc/findings';
import type { DeclaredCure, FormulaLine, LinePart } from '@larderwright/calc/formula';
import * as say from '#words/batch-formula/part-field.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { editAt } from '../state/store.ts';
import { PART_NAMES } from '../words/line-parts.ts';
import { withPart } from './line-edits.ts';

const CHOICES = Object.entries(PART_NAMES).map(([value, label]) => ({ value, label }));

/** Lines whose part a person chose in this visit: picking an ingredient must not change it. */
const chosen = new Set<string>();
/** Strengths typed for lines that were a curing salt a moment ago, so that a slip of the list loses nothing. */
const knownCures = new Map<string, DeclaredCure>();

export function partWasChosen(lineId: string): boolean {
  return chosen.has(lineId);
}

function isPart(value: string): value is LinePart {
  return value in PART_NAMES;
}

/** What the line does in the mix. */
export function PartField({ line, findings }: { line: FormulaLine; findings: readonly Finding[] }) {
  return (
    <ChoiceField
      label={say.part}
      value={line.part}
      choices={CHOICES}
      onChoose={(part) => {
        if (!isPart(part)) return;
        chosen.add(line.id);
        if (line.cure) knownCures.set(line.id, line.cure);
        editAt(`formula.lines.${line.id}`, withPart(line, part, knownCures.get(line.id) ?? null));
      }}
      findings={findings}
      compact
    />
  );
}
