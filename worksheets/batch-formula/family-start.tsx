import { newLine } from '@larderwright/calc/batch';
import { type FormulaLine, familyOf, familyStart } from '@larderwright/calc/formula';
import { defaultEntry, type Entry, entryValue } from '@larderwright/calc/quantities';
import { useState } from 'preact/hooks';
import * as say from '#words/batch-formula/family-start.ts';
import { NumberBox } from '../parts/number-box.tsx';
import { newId } from '../state/clock.ts';
import { edit } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';

/** Size a batch is begun at until somebody says otherwise. */
const USUAL_TOTAL: Entry = defaultEntry('3', 'kg');

/** The lines a batch of a family begins with: what they do is known, what they are is for the cook to say. */
function startLines(start: ReturnType<typeof familyStart>): FormulaLine[] {
  return start.lines.map(({ part, amount, basis }) => {
    const line = { ...newLine(newId(), part), amount, basis };
    return part === 'salt' ? { ...line, name: say.salt, ingredientId: 'salt' } : line;
  });
}

/** Begins an empty formula from the usual shares of the chosen family. */
export function FamilyStart() {
  const [total, setTotal] = useState<Entry>(USUAL_TOTAL);
  const [done, setDone] = useState(0);
  const id = useAt('formula.familyId');
  const lines = useAt('formula.lines') as readonly FormulaLine[];
  const family = familyOf(typeof id === 'string' ? id : null);
  const totalG = entryValue('mass', total);
  const begin = () => {
    if (!family || !totalG) return;
    const start = familyStart(family, totalG);
    const begun = startLines(start);
    edit((batch) => {
      const { formula } = batch;
      // What somebody typed as the salt wanted stands.
      const saltTarget = formula.saltTarget.origin === 'default' ? start.saltTarget : formula.saltTarget;
      return { ...batch, formula: { ...formula, lines: begun, saltTarget } };
    });
    setDone(begun.length);
  };
  return (
    <>
      {family && lines.length === 0 ? (
        <div class="add-row">
          <NumberBox
            label={say.everythingInTheBowlAbout}
            kind="mass"
            entry={total}
            onEntry={setTotal}
            units={['kg', 'g', 'lb']}
            hint={say.largestPartPutGramsOthers}
          />
          <button type="button" class="press-first" disabled={!totalG} onClick={begin}>
            {say.beginWithItsUsualShares}
          </button>
        </div>
      ) : null}
      <p class="say" role="status">
        {done > 0 && lines.length > 0 ? say.linesBegunAmountsDefaults(done) : ''}
      </p>
    </>
  );
}
