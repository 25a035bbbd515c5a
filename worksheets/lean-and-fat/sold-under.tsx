import { type BlendSlice, type BlendStandard, newBlendStandard } from '@larderwright/calc/blend';
import type { Verdict } from '@larderwright/calc/findings';
import { NAMED_STANDARDS, namedStandardOf } from '@larderwright/calc/formula';
import { sourceOf } from '@larderwright/calc/sources';
import * as phrases from '#words/lean-and-fat/sold-under.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { Worked } from '../parts/worked.tsx';
import { edit } from '../state/store.ts';
import { useAt } from '../state/use-shared.ts';
import { blendWorkings, standardLimitText } from '../words/blend.ts';

const KEEPS = [
  { value: 'yes', label: phrases.yesAsBounds },
  { value: 'no', label: phrases.noTheyAreOnlyJudged },
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
          label={phrases.soldUnitedStatesUnderName}
          value={said.nameId ?? ''}
          empty={phrases.none}
          choices={NAMED_STANDARDS.map(({ id, name }) => ({ value: id, label: name }))}
          onChoose={(id) => say({ nameId: id === '' ? null : id })}
          hint={phrases.elsewhereOtherStandardsHoldAsk}
        />
        {standard?.cooked ? (
          <NumberBox
            label={phrases.finishedWeightOfWhatWentIn}
            kind="fraction"
            units={['%']}
            range={{ min: 0.4, max: 1.3 }}
            entry={said.yield}
            onEntry={(entry) => say({ yield: entry })}
            hint={phrases.afterCookChillOwnWeighings}
          />
        ) : null}
        {standard ? (
          <ChoiceField
            label={phrases.doesTheCheapestBlendKeepTo}
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
            caption={phrases.standardOf(standard.name)}
            columns={[phrases.limit, phrases.by]}
            rows={standard.limits.map((limit) => ({
              key: limit.quality,
              head: standardLimitText(limit),
              cells: [`${limit.section}, ${sourceOf(standard.source).edition}`],
            }))}
          />
          <Worked>
            <p>{phrases.n9Cfr31822B318(blendWorkings.standard)}</p>
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
