import type { FormulaLine } from '@larderwright/calc/formula';
import * as say from '#words/salt-and-cure/curing-salts.ts';
import { Computed } from '../parts/computed.tsx';
import { CureStrength } from '../parts/cure-strength.tsx';
import { at, FindingList, within } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { TextField } from '../parts/text-field.tsx';
import { addCuringSalt } from '../state/lines.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import type { CureComputed } from './compute.ts';
import { $cure } from './computed.ts';
import { DoseAnswer } from './dose-answer.tsx';
import { WeighingAnswer } from './weighing-answer.tsx';

/** Findings of a curing salt that its own fields show. */
const OWN_FIELDS = ['amount', 'actual', 'lot', 'cure.nitrite', 'cure.nitrate'];

/** Every curing salt of the formula with its strength, its dose and its weighing. */
export function CuringSalts() {
  const lines = useAt('formula.lines') as readonly FormulaLine[];
  const salts = lines.filter((line) => line.part === 'curing-salt');
  const computed = useShared($cure);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <>
      {salts.length === 0 ? (
        <>
          <p class="say">{say.theFormulaHasNoCuringSalt}</p>
          <button type="button" onClick={addCuringSalt}>
            {say.addACuringSaltToThe}
          </button>
        </>
      ) : null}
      {salts.map((line) => (
        <CuringSalt key={line.id} line={line} computed={ready} />
      ))}
      {salts.length > 0 ? (
        <Computed of={computed}>{(value) => <DoseAnswer computed={value} salts={salts} />}</Computed>
      ) : null}
    </>
  );
}

function CuringSalt({ line, computed }: { line: FormulaLine; computed: CureComputed | null }) {
  const path = `formula.lines.${line.id}`;
  const mine = within(computed?.findings ?? [], path);
  const weighing = computed?.cure.weighing.find(({ lineId }) => lineId === line.id) ?? null;
  return (
    <fieldset class="curing-salt">
      <legend>{line.name || say.curingSalt}</legend>
      <CureStrength lineId={line.id} findings={mine} />
      <div class="fields">
        <NumberField
          path={`${path}.amount`}
          label={say.inTheFormula}
          kind="mass"
          gramsOnly
          findings={at(mine, `${path}.amount`)}
        />
        <NumberField
          path={`${path}.actual`}
          label={say.asWeighed}
          kind="mass"
          gramsOnly
          findings={at(mine, `${path}.actual`)}
        />
        <TextField path={`${path}.lot`} label={say.lotOfThePack} findings={at(mine, `${path}.lot`)} />
      </div>
      {weighing ? <WeighingAnswer weighing={weighing} /> : null}
      <FindingList
        findings={mine.filter(({ field }) => !OWN_FIELDS.includes(field?.slice(path.length + 1) ?? ''))}
      />
    </fieldset>
  );
}
