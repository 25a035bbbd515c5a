import type { FormulaLine } from '@larderwright/calc/formula';
import { enteredEntry, plainText } from '@larderwright/calc/quantities';
import { useContext, useState } from 'preact/hooks';
import * as phrases from '#words/trim-and-yield/copy-yield.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { Links } from '../parts/links.ts';
import { withPlanLine } from '../plan-and-cost/plan-edits.ts';
import { $batch, edit } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';

/** Tenths of a per cent: no trim test is finer. */
const TENTHS = 1000;

/** Writes a yield into the plan, at the line of the formula that is cut from this piece. */
export function CopyYield({ usable, name }: { usable: number | null; name: string }) {
  const links = useContext(Links);
  const lines = useAt('formula.lines') as readonly FormulaLine[];
  const [chosen, choose] = useState('');
  const [said, say] = useState('');
  if (usable === null) return null;
  if (lines.length === 0)
    return (
      <p class="say">
        {phrases.toUseThisYieldInA(<a href={links.worksheets['batch-formula']}>{phrases.writeTheFormula}</a>)}
      </p>
    );
  const line = lines.find(({ id }) => id === chosen) ?? null;
  // Down, so that the plan never buys too little.
  const percent = plainText(Math.floor(usable * TENTHS + 1e-9) / (TENTHS / 100));
  const copy = () => {
    if (!line) return;
    edit((batch) => withPlanLine(batch, line.id, { trimYield: enteredEntry(percent, '%') }));
    const stands = $batch.get().plan?.lines.some(({ lineId }) => lineId === line.id);
    say(stands ? phrases.thePlanNowCountsYieldFor(percent, line.name || phrases.thisLine) : '');
  };
  return (
    <div class="add-row">
      <ChoiceField
        label={phrases.lineOfTheFormulaCutFrom(name)}
        value={chosen}
        empty={phrases.chooseALine}
        choices={lines.map(({ id, name: lineName }, place) => ({
          value: id,
          label: lineName || phrases.line(place + 1),
        }))}
        onChoose={choose}
      />
      <button type="button" disabled={line === null} onClick={copy}>
        {phrases.useInThePlan(percent)}
      </button>
      <p class="say" role="status">
        {said}
      </p>
    </div>
  );
}
