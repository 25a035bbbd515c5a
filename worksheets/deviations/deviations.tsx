import type { Deviation } from '@larderwright/calc/batch';
import type { Finding } from '@larderwright/calc/findings';
import * as say from '#words/deviations/deviations.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { FindingLine } from '../parts/finding-line.tsx';
import { at } from '../parts/finding-list.tsx';
import { MomentBox } from '../parts/moment-box.tsx';
import { RemovedRowLine } from '../parts/row-tools.tsx';
import { TextBox } from '../parts/text-box.tsx';
import { FIRST } from '../readings/edits.ts';
import { benchNow } from '../state/bench-clock.ts';
import { newId } from '../state/clock.ts';
import { addRow, removeRow } from '../state/rows.ts';
import { $life, edit } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';

const LIST = 'deviations';

const DECISIONS: readonly { value: Exclude<Deviation['decision'], ''>; label: string }[] = [
  { value: 'hold', label: say.holdNothingLeavesUntilDecided },
  { value: 'reheat', label: say.reheatIfRuleTimeAllow },
  { value: 'discard', label: say.discard },
  { value: 'release', label: say.release },
];

function blankDeviation(id: string): Deviation {
  return { id, at: '', what: '', decision: '', cause: '', prevention: '', by: '' };
}

/** Changes a deviation; `FIRST` begins one, at the present moment. */
function changeDeviation(id: string, patch: Partial<Deviation>): void {
  edit((batch) => {
    const { deviations } = batch;
    if (id === FIRST && deviations.length === 0) {
      return { ...batch, deviations: [{ ...blankDeviation(newId()), at: benchNow(), ...patch }] };
    }
    const wanted = id === FIRST ? deviations[0]?.id : id;
    return {
      ...batch,
      deviations: deviations.map((row) => (row.id === wanted ? { ...row, ...patch } : row)),
    };
  });
}

/** What went wrong, what becomes of the product, why it happened and what stops it next time. */
export function Deviations({ findings = [] }: { findings?: readonly Finding[] }) {
  const rows = useAt(LIST) as readonly Deviation[];
  const waking = useShared($life) === 'waking';
  const shown = rows.length > 0 ? rows : [blankDeviation(FIRST)];
  return (
    <div class="deviations">
      {at(findings, LIST).map((finding) => (
        <FindingLine key={finding.id} finding={finding} />
      ))}
      {shown.map((row, index) => (
        <DeviationCard
          key={index === 0 ? FIRST : row.id}
          row={row}
          number={index + 1}
          findings={findings}
          removable={rows.length > 0}
        />
      ))}
      <RemovedRowLine list={LIST} />
      <p class="buttons">
        <button
          type="button"
          disabled={waking || rows.length === 0}
          onClick={() => {
            const row: Deviation = { ...blankDeviation(newId()), at: benchNow() };
            addRow(LIST, row);
          }}
        >
          {say.addAnother}
        </button>
      </p>
    </div>
  );
}

interface DeviationCardProps {
  row: Deviation;
  number: number;
  findings: readonly Finding[];
  removable: boolean;
}

function DeviationCard({ row, number, findings, removable }: DeviationCardProps) {
  const path = `${LIST}.${row.id}`;
  const change = (patch: Partial<Deviation>) => changeDeviation(row.id, patch);
  return (
    <fieldset class="deviation">
      <legend>{say.deviation(number)}</legend>
      <TextBox label={say.whatHappened} long text={row.what} onText={(what) => change({ what })} />
      <div class="fields">
        <ChoiceField
          label={say.decisionAboutTheProduct}
          value={row.decision}
          empty={say.notDecided}
          choices={DECISIONS}
          onChoose={(decision) => change({ decision: decision as Deviation['decision'] })}
          findings={at(findings, `${path}.decision`)}
        />
        <TextBox label={say.decidedBy} text={row.by} onText={(by) => change({ by })} />
        <MomentBox
          label={say.decidedAt}
          iso={row.at === '' ? null : row.at}
          offerNow
          onMoment={(iso) => change({ at: iso ?? '' })}
        />
      </div>
      <TextBox label={say.cause} long text={row.cause} onText={(cause) => change({ cause })} />
      <TextBox
        label={say.preventionWhatDoneDoesNot}
        long
        text={row.prevention}
        onText={(prevention) => change({ prevention })}
      />
      {removable ? (
        <p class="buttons">
          <button type="button" onClick={() => removeRow(LIST, row.id, say.deviation2(number))}>
            {say.removeDeviation(number)}
          </button>
        </p>
      ) : null}
    </fieldset>
  );
}
