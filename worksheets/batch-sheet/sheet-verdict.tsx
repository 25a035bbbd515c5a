import * as say from '#words/batch-sheet/sheet-verdict.ts';
import type { SheetVerdict } from './sheet-model.ts';

const WORD = { pass: say.pass, fail: say.fail, 'cannot-tell': say.cannotTell } as const;

/** Verdicts as they print: the word first, the limit's source behind it. */
export function SheetVerdicts({ verdicts }: { verdicts: readonly SheetVerdict[] }) {
  if (verdicts.length === 0) return null;
  return (
    <ul class="sheet-verdicts">
      {verdicts.map((verdict) => (
        <li key={`${verdict.state} ${verdict.title}`} data-state={verdict.state}>
          <strong>{WORD[verdict.state]}</strong> {verdict.title}
          {verdict.basis ? ` [${verdict.basis}${verdict.fromMemory ? say.limitFromMemory : ''}]` : ''}
        </li>
      ))}
    </ul>
  );
}
