import { blankEntry, type Entry, entryValue } from '@larderwright/calc/quantities';
import { useId, useState } from 'preact/hooks';
import { FieldFrame } from '../parts/field-frame.tsx';
import { readField } from '../parts/read-field.ts';
import { newId, zoneHere } from '../state/clock.ts';
import { keptText, LONGEST_LINE } from '../state/typed.ts';
import { CLOCKS, TIMER_NAMES } from '../words/clocks.ts';
import { changeClocks } from './clock-store.ts';

const MINUTE_MS = 60_000;
/** From a minute to a cure of two months. */
const RANGE_MIN = { min: 1, max: 60 * 24 * 60 };

interface OwnTimerProps {
  /** The batch it is for; '' for none. */
  batchId: string;
  batch: string;
}

/** A clock for a step that no log has: what for, how long, and it runs. */
export function OwnTimer({ batchId, batch }: OwnTimerProps) {
  const id = useId();
  const [name, setName] = useState('');
  const [length, setLength] = useState<Entry>(blankEntry('min'));
  const [asked, setAsked] = useState(false);
  const { problem, readBack } = readField('time', length, { range: RANGE_MIN });
  const minutes = problem === undefined ? entryValue('time', length, { range: RANGE_MIN }) : null;
  const start = () => {
    setAsked(true);
    if (minutes === null) return;
    const startedMs = Date.now();
    changeClocks((clocks) => [
      ...clocks,
      {
        id: newId(),
        batchId,
        batch,
        zone: zoneHere(),
        kind: 'timer',
        label: name.trim() || CLOCKS.unnamed,
        startedMs,
        endsMs: startedMs + minutes * MINUTE_MS,
        maybe: false,
        told: [],
      },
    ]);
    setName('');
    setLength(blankEntry('min'));
    setAsked(false);
  };
  return (
    <form
      class="clock-own"
      onSubmit={(event) => {
        event.preventDefault();
        start();
      }}
    >
      <h3>{CLOCKS.own}</h3>
      <div class="fields">
        <FieldFrame id={`${id}-name`} label={CLOCKS.name} hint={CLOCKS.nameHint}>
          <input
            id={`${id}-name`}
            class="field-input field-words"
            type="text"
            list={`${id}-names`}
            value={name}
            autocomplete="off"
            aria-describedby={`${id}-name-says`}
            onInput={({ currentTarget }) => setName(keptText(currentTarget.value, LONGEST_LINE))}
          />
          <datalist id={`${id}-names`}>
            {TIMER_NAMES.map((each) => (
              <option key={each} value={each} />
            ))}
          </datalist>
        </FieldFrame>
        <FieldFrame
          id={`${id}-length`}
          label={CLOCKS.minutes}
          hint={CLOCKS.minutesHint}
          problem={problem ?? (asked && length.text.trim() === '' ? CLOCKS.noLength : undefined)}
          readBack={readBack}
        >
          <input
            id={`${id}-length`}
            class="field-input"
            type="text"
            inputMode="text"
            value={length.text}
            autocomplete="off"
            spellcheck={false}
            aria-invalid={problem ? 'true' : undefined}
            aria-describedby={`${id}-length-says`}
            onInput={({ currentTarget }) =>
              setLength({ text: keptText(currentTarget.value, LONGEST_LINE), unit: 'min', origin: 'entered' })
            }
          />
          <span class="field-unit">min</span>
        </FieldFrame>
      </div>
      <p class="buttons">
        <button type="submit">{CLOCKS.start}</button>
      </p>
    </form>
  );
}
