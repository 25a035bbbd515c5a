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
import * as phrases from '#words/batch-sheet/batch-state.ts';
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
  planned: phrases.plannedAgain,
  'in-process': phrases.inProcess,
  held: phrases.holdItNothingLeaves,
  released: phrases.releaseIt,
  discarded: phrases.discardIt,
};

const saidAt = ({ at, by, second, why }: StateChange) => {
  const wall = wallOf(at);
  return [
    wall ? `${wall.date} ${wall.clock.slice(0, 5)}` : at,
    [by, second].filter(Boolean).join(phrases.and),
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
        {phrases.theBatchIs(
          <span class="batch-state" data-state={state}>
            {STATE_WORDS[state]}
          </span>,
          change ? `: ${saidAt(change)}` : phrases.whatMeasuredNobodyHasSaidYet,
        )}
      </p>
      <div class="fields">
        <TextBox
          label={phrases.whoIsAtThisBench}
          text={name}
          onText={setWho}
          hint={phrases.nameInitialsKeptEveryChange}
        />
      </div>
      <NextState batch={batch} />
      {batch.lifecycle.length > 1 ? (
        <details class="worked">
          <summary>{phrases.earlierStates}</summary>
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
          label={phrases.bringItIntoAnotherState}
          value={here}
          empty={phrases.leaveIt}
          choices={open.map((state) => ({ value: state, label: ASKS[state] }))}
          onChoose={(value) => {
            setWanted(value as BatchState | '');
            setBars([]);
          }}
        />
        {here === 'released' ? (
          <TextBox
            label={phrases.secondPerson}
            text={second}
            onText={setSecond}
            hint={phrases.hasReadRecordDidNotMake}
          />
        ) : null}
        {here !== '' ? (
          <TextBox
            label={
              here === 'held' || here === 'discarded' || fromHeld ? phrases.why : phrases.whyIfThereIsMoreTo
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
              <strong class="finding-word">{phrases.stop}</strong>{' '}
              {phrases.not(here === '' ? phrases.done : STATE_WORDS[here])}
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
