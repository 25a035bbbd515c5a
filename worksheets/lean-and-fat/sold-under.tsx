import { type BlendSlice, type BlendStandard, newBlendStandard } from '@larderwright/calc/blend';
import type { Verdict } from '@larderwright/calc/findings';
import { NAMED_STANDARDS, namedStandardOf } from '@larderwright/calc/formula';
import { sourceOf } from '@larderwright/calc/sources';
import { ChoiceField } from '../parts/choice-field.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { Worked } from '../parts/worked.tsx';
import { edit } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { blendWorkings, standardLimitText } from '../words/blend.ts';

const NONE = 'None of these';
const KEEPS = [
  { value: 'yes', label: 'Yes, as bounds' },
  { value: 'no', label: 'No, they are only judged' },
];

/** Writes about the name; a record of before it was asked gets the blank first. */
function say(change: Partial<BlendStandard>): void {
  edit((batch) => {
    if (!batch.blend) return batch;
    const standard = { ...(batch.blend.standard ?? newBlendStandard()), ...change };
    return { ...batch, blend: { ...batch.blend, standard } };
  });
}

/** The name a product is sold under, and what the law asks of that name. */
export function SoldUnder() {
  const slice = useAt('blend') as BlendSlice;
  const said = slice.standard ?? newBlendStandard();
  const standard = namedStandardOf(said.nameId);
  return (
    <>
      <div class="fields">
        <ChoiceField
          label="Sold in the United States under the name"
          value={said.nameId ?? ''}
          empty={NONE}
          choices={NAMED_STANDARDS.map(({ id, name }) => ({ value: id, label: name }))}
          onChoose={(id) => say({ nameId: id === '' ? null : id })}
          hint="Elsewhere other standards hold: ask your authority. A pâté or terrine has no standard of its own here."
        />
        {standard?.cooked ? (
          <NumberBox
            label="Finished weight, of what went in"
            kind="fraction"
            units={['%']}
            range={{ min: 0.4, max: 1.3 }}
            entry={said.yield}
            onEntry={(entry) => say({ yield: entry })}
            hint="After the cook and the chill. By your own weighings: there is no usual figure that is safe here."
          />
        ) : null}
        {standard ? (
          <ChoiceField
            label="Does the cheapest blend keep to them?"
            value={said.asBounds ? 'yes' : 'no'}
            choices={KEEPS}
            onChoose={(value) => say({ asBounds: value === 'yes' })}
          />
        ) : null}
      </div>
      {standard ? (
        <>
          <FigureTable
            words
            caption={`Standard of “${standard.name}”`}
            columns={['Limit', 'By']}
            rows={standard.limits.map((limit) => ({
              key: limit.quality,
              head: standardLimitText(limit),
              cells: [`${limit.section}, ${sourceOf(standard.source).edition}`],
            }))}
          />
          <Worked>
            <p>
              {blendWorkings.standard} 9 CFR 318.22(b) and 318.19(a)(5); the rest is derived: mass balance.
            </p>
          </Worked>
        </>
      ) : null}
    </>
  );
}

/** Whether a blend keeps to the standard; nothing where no name is chosen. */
export function StandardVerdicts({ verdicts }: { verdicts: readonly Verdict[] }) {
  return (
    <>
      {verdicts.map((verdict) => (
        <VerdictLine key={verdict.id} verdict={verdict} />
      ))}
    </>
  );
}
