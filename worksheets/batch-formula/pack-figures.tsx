import type { Finding } from '@larderwright/calc/findings';
import type { FormulaLine } from '@larderwright/calc/formula';
import { useEffect, useRef } from 'preact/hooks';
import * as say from '#words/batch-formula/pack-figures.ts';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { TextField } from '../parts/text-field.tsx';

const FIGURES = [
  { field: 'salt', label: say.salt },
  { field: 'fat', label: say.fat },
  { field: 'protein', label: say.protein },
  { field: 'water', label: say.water },
] as const;

/** How much a maker's cured garnish may carry is told in mg/kg; more than this is a slip of the keyboard. */
const CARRIED_PPM = { min: 0, max: 1000 };

/** Whether anything was written off the pack. */
function isDeclared({ declared, carriedNitrite }: FormulaLine): boolean {
  return carriedNitrite.text !== '' || Object.values(declared).some((entry) => entry.text !== '');
}

/** What the pack or the supplier's sheet says of a line. It outranks the table; blank leaves the table. */
export function PackFigures({ line, findings }: { line: FormulaLine; findings: readonly Finding[] }) {
  const path = `formula.lines.${line.id}`;
  const box = useRef<HTMLDetailsElement>(null);
  const wanted = findings.some(
    ({ field }) => field?.startsWith(`${path}.declared`) || field === `${path}.carriedNitrite`,
  );
  // Something inside wants attention. It is never closed again from here: a person may be writing in it.
  useEffect(() => {
    if (wanted && box.current) box.current.open = true;
  }, [wanted]);
  return (
    <details ref={box} class="pack" data-written={isDeclared(line) ? '' : undefined}>
      <summary>{isDeclared(line) ? say.packFiguresWritten : say.packFigures}</summary>
      <div class="fields">
        {FIGURES.map(({ field, label }) => (
          <NumberField
            key={field}
            path={`${path}.declared.${field}`}
            label={say.inIt(label)}
            kind="fraction"
            findings={at(findings, `${path}.declared.${field}`)}
          />
        ))}
        {line.part === 'curing-salt' ? null : (
          <NumberField
            path={`${path}.carriedNitrite`}
            label={say.nitriteItBringsAsSodiumNitrite}
            kind="ppm"
            range={CARRIED_PPM}
            hint={say.curedMeatMixMakerType0}
            findings={at(findings, `${path}.carriedNitrite`)}
          />
        )}
        <TextField
          path={`${path}.name`}
          label={say.whatItIsCalledHere}
          hint={say.nameOwnFiguresStayIngredient}
        />
      </div>
    </details>
  );
}
