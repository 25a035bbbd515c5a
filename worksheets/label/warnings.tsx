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
        Sentences of our own. Where your authority has its wording, print that.
        {values.warnings.includes('cook-first')
          ? ' In the United States raw meat carries the safe handling panel: 9 CFR 317.2(l).'
          : null}
      </p>
      <FindingList
        findings={findings.filter(({ field }) => field === undefined || field === 'label.extras')}
      />
      {sold ? (
        <div class="answers">
          <Answer
            label="Price of a slice"
            value={sold.perSlice}
            missing="Cannot tell: plan or slicing is not finished"
            worked={<p>{labelWorkings.price}</p>}
          />
          <Answer
            label="Price of a kilogram"
            value={sold.perKg}
            missing="Cannot tell: plan or slicing is not finished"
            worked={<p>{labelWorkings.price}</p>}
          />
          <Answer
            label="Price of a pound"
            value={sold.perLb}
            missing="Cannot tell: plan or slicing is not finished"
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
