import {
  type Batch,
  type BatchState,
  changeState,
  issueAssessment,
  nextStates,
  type StateBar,
  type StateChange,
  stateOf,
} from '@larderwright/calc/batch';
import { useState } from 'preact/hooks';
import { ChoiceField } from '../parts/choice-field.tsx';
import { wallOf } from '../parts/clock-text.ts';
import { TextBox } from '../parts/text-box.tsx';
import { newId, nowIso } from '../state/clock.ts';
import { $batch, edit } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { $who, setWho } from '../state/who.ts';
import { barWords } from '../words/state-bars.ts';
import { STATE_WORDS } from '../words/states.ts';
import { ChangeHistory } from './change-history.tsx';
import { $sheet } from './computed.ts';
import { Dispatches } from './dispatches.tsx';

/** What a person is asked for on the way into a state. */
const ASKS: Readonly<Record<BatchState, string>> = {
  planned: 'Planned again',
  'in-process': 'In process',
  held: 'Hold it: nothing leaves',
  released: 'Release it',
  discarded: 'Discard it',
};

const saidAt = ({ at, by, second, why }: StateChange) => {
  const wall = wallOf(at);
  return [
    wall ? `${wall.date} ${wall.clock.slice(0, 5)}` : at,
    [by, second].filter(Boolean).join(' and '),
    why,
  ]
    .filter(Boolean)
    .join(', ');
};

/** How the batch stands, who said so, where it went, and what was changed in its record. */
export function BatchStateSection() {
  const batch = useShared($batch);
  const { state, change } = stateOf(batch);
  const name = useShared($who);
  return (
    <div class="batch-state-panel">
      <p class="state-now">
        The batch is{' '}
        <span class="batch-state" data-state={state}>
          {STATE_WORDS[state]}
        </span>
        {change ? `: ${saidAt(change)}` : ', by what was measured. Nobody has said so yet'}.
      </p>
      <div class="fields">
        <TextBox
          label="Who is at this bench"
          text={name}
          onText={setWho}
          hint="Name or initials, kept with every change until this tab is closed."
        />
      </div>
      <NextState batch={batch} />
      {batch.lifecycle.length > 1 ? (
        <details class="worked">
          <summary>Earlier states</summary>
          <ol class="worked-body">
            {batch.lifecycle.map((each) => (
              <li key={each.id}>
                {STATE_WORDS[each.state]}: {saidAt(each)}
              </li>
            ))}
          </ol>
        </details>
      ) : null}
      <Dispatches />
      <ChangeHistory />
    </div>
  );
}

function NextState({ batch }: { batch: Batch }) {
  const computed = useShared($sheet);
  const by = useShared($who);
  const [wanted, setWanted] = useState<BatchState | ''>('');
  const [second, setSecond] = useState('');
  const [why, setWhy] = useState('');
  const [bars, setBars] = useState<readonly StateBar[]>([]);
  const open = nextStates(batch);
  const here = wanted !== '' && open.includes(wanted) ? wanted : '';
  const judged = computed.state === 'ready' ? computed.value : null;
  const fromHeld = stateOf(batch).state === 'held';
  const say = () => {
    if (here === '' || !judged) return;
    const { assessment, composition } = judged;
    const at = nowIso();
    const released = here === 'released';
    const change: StateChange = { id: newId(), state: here, at, by, second: released ? second : '', why };
    const result = changeState($batch.get(), change, assessment);
    setBars(result.ok ? [] : result.bars);
    if (!result.ok) return;
    // The grounds of a release are kept as they stood.
    const issued = released ? [issueAssessment(result.batch, assessment, composition, at)] : [];
    edit(() => ({ ...result.batch, issued: [...result.batch.issued, ...issued] }));
    setWanted('');
    setSecond('');
    setWhy('');
  };
  return (
    <>
      <div class="fields">
        <ChoiceField
          label="Bring it into another state"
          value={here}
          empty="Leave it"
          choices={open.map((state) => ({ value: state, label: ASKS[state] }))}
          onChoose={(value) => {
            setWanted(value as BatchState | '');
            setBars([]);
          }}
        />
        {here === 'released' ? (
          <TextBox
            label="Second person"
            text={second}
            onText={setSecond}
            hint="Has read the record, and did not make the batch."
          />
        ) : null}
        {here !== '' ? (
          <TextBox
            label={
              here === 'held' || here === 'discarded' || fromHeld ? 'Why' : 'Why, if there is more to say'
            }
            text={why}
            onText={setWhy}
          />
        ) : null}
      </div>
      {here !== '' ? (
        <p class="buttons">
          <button type="button" disabled={!judged} onClick={say}>
            {ASKS[here]}
          </button>
        </p>
      ) : null}
      <div role="alert">
        {bars.length > 0 ? (
          <div class="finding" data-severity="stop">
            <p>
              <strong class="finding-word">STOP</strong> Not {here === '' ? 'done' : STATE_WORDS[here]}:
            </p>
            <ul>
              {bars.map((bar) => (
                <li key={barWords(bar)}>{barWords(bar)}</li>
              ))}
            </ul>
          </div>
        ) : null}
      </div>
    </>
  );
}
