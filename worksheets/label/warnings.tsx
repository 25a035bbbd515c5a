import * as say from '#words/label/warnings.ts';
import { Answer } from '../parts/answer.tsx';
import { FindingList } from '../parts/finding-list.tsx';
import { Needed } from '../parts/needed.tsx';
import { useShared } from '../state/use-shared.ts';
import { labelFigureNames, labelWorkings, WARNING_WORDS } from '../words/label.ts';
import { $label } from './computed.ts';
import { nameOfField } from './field-names.ts';

/** Lines for those who eat it, what else there is to say, and what is missing. */
export function Warnings() {
  const computed = useShared($label);
  if (computed.state !== 'ready') return null;
  const { values, findings, missing, sold } = computed.value;
  return (
    <>
      <ul class="label-warnings">
        {values.warnings.map((id) => (
          <li key={id}>{WARNING_WORDS[id]}</li>
        ))}
      </ul>
      <p class="say">
        {say.sentencesOurOwnWhereAuthority}
        {values.warnings.includes('cook-first') ? say.unitedStatesRawMeatCarriesSafe : null}
      </p>
      <FindingList
        findings={findings.filter(({ field }) => field === undefined || field === 'label.extras')}
      />
      {sold ? (
        <div class="answers">
          <Answer
            label={say.priceOfASlice}
            value={sold.perSlice}
            missing={say.cannotTellPlanSlicingNot}
            worked={<p>{labelWorkings.price}</p>}
          />
          <Answer
            label={say.priceOfAKilogram}
            value={sold.perKg}
            missing={say.cannotTellPlanSlicingNot}
            worked={<p>{labelWorkings.price}</p>}
          />
          <Answer
            label={say.priceOfAPound}
            value={sold.perLb}
            missing={say.cannotTellPlanSlicingNot}
            worked={<p>{labelWorkings.price}</p>}
          />
        </div>
      ) : null}
      <Needed
        missing={missing}
        figures={labelFigureNames}
        nameOf={(field) => nameOfField(field, values.parts)}
      />
    </>
  );
}
