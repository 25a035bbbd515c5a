import { newReading } from '@larderwright/calc/batch';
import type { Entry } from '@larderwright/calc/quantities';
import { useEffect, useRef, useState } from 'preact/hooks';
import * as say from '#words/readings/quick-entry.ts';
import { type ClockProblem, dayWords, wallOf } from '../parts/clock-text.ts';
import { FieldFrame } from '../parts/field-frame.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { TextBox } from '../parts/text-box.tsx';
import { benchMoment, benchNow } from '../state/bench-clock.ts';
import { newId } from '../state/clock.ts';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { clockProblemWords } from '../words/clock.ts';
import { type Draft, EMPTY_DRAFT, freshDraft, keepDraft, storedDraft } from './draft.ts';
import { addReading } from './edits.ts';

interface QuickEntryProps {
  logId: string;
  /** Name of the log, said back when there are several. */
  logName: string | null;
}

/**
 * One reading at the bench: the temperature, Enter, the next. The time is now unless another is written.
 * The hand goes back to the field it began with.
 */
export function QuickEntry({ logId, logName }: QuickEntryProps) {
  const waking = useShared($life) === 'waking';
  const [draft, setDraft] = useState<Draft>(EMPTY_DRAFT);
  const [problem, setProblem] = useState<ClockProblem | 'no-temperature' | null>(null);
  const [said, setSaid] = useState('');
  const form = useRef<HTMLFormElement>(null);
  const latest = useRef(EMPTY_DRAFT);
  const adding = useRef(false);

  useEffect(() => {
    const stored = storedDraft() ?? freshDraft();
    latest.current = stored;
    setDraft(stored);
  }, []);
  const change = (part: Partial<Draft>) => {
    const next = { ...latest.current, ...part };
    latest.current = next;
    setDraft(next);
    keepDraft(next);
    setProblem(null);
  };
  const focus = (name: 'clock' | 'temperature') =>
    form.current?.querySelector<HTMLInputElement>(`[data-entry="${name}"] .field-input`)?.focus();

  const entry: Entry = { text: draft.temperature, unit: draft.unit, origin: 'entered' };
  const add = async () => {
    // The reader of numbers is fetched with the first reading: a second Enter must not add it twice.
    if (adding.current) return;
    adding.current = true;
    const { readField } = await import('../parts/read-field.ts');
    adding.current = false;
    const blank = draft.temperature.trim() === '';
    if (blank || readField('temperature', entry, {}).problem !== undefined) {
      if (blank) setProblem('no-temperature');
      focus('temperature');
      return;
    }
    const enteredAt = benchNow();
    const moment =
      draft.clock.trim() === '' ? { ok: true as const, iso: enteredAt } : benchMoment(draft.day, draft.clock);
    if (!moment.ok) {
      setProblem(moment.problem);
      focus('clock');
      return;
    }
    const reading = newReading(newId(), moment.iso, draft.temperature, draft.unit, enteredAt);
    addReading(logId, { ...reading, initials: draft.initials.trim() });
    const wall = wallOf(moment.iso);
    setSaid(
      say.addedAt(logName ? say.to(logName) : '', draft.temperature.trim(), draft.unit) +
        `${wall?.clock.slice(0, 5) ?? ''}, ${dayWords(wall?.date ?? '')}.`,
    );
    focus(draft.clock.trim() === '' ? 'temperature' : 'clock');
    // What was typed on meanwhile belongs to the next reading.
    const { clock, temperature } = latest.current;
    change({
      clock: clock === draft.clock ? '' : clock,
      temperature: temperature === draft.temperature ? '' : temperature,
    });
  };

  const clockProblem = problem !== null && problem !== 'no-temperature' ? problem : null;
  return (
    <form
      class="quick-entry"
      ref={form}
      aria-label={say.addAReading}
      onSubmit={(event) => {
        event.preventDefault();
        void add();
      }}
    >
      <div class="quick-entry-fields">
        <div data-entry="clock">
          <ClockBox
            clock={draft.clock}
            problem={clockProblem}
            waking={waking}
            onClock={(clock) => change({ clock })}
          />
        </div>
        <div data-entry="temperature">
          <NumberBox
            label={say.core}
            kind="temperature"
            units={['C', 'F']}
            entry={entry}
            onEntry={({ text, unit }) => change({ temperature: text, unit: unit === 'F' ? 'F' : 'C' })}
            hint={
              problem === 'no-temperature' ? (
                <span class="field-problem">{say.writeWhatTheProbeShows}</span>
              ) : undefined
            }
          />
        </div>
        <div data-entry="initials">
          <TextBox
            label={say.initials}
            short
            text={draft.initials}
            onText={(initials) => change({ initials })}
          />
        </div>
        <button type="submit" class="press-first" disabled={waking}>
          {say.addReading}
        </button>
      </div>
      <details class="quick-entry-day">
        <summary>{say.readOnAnotherDay}</summary>
        <label>
          {say.dayReadingBlankLastTimeClock}{' '}
          <input
            class="field-input field-day"
            type="date"
            value={draft.day}
            onChange={(event) => change({ day: event.currentTarget.value })}
          />
        </label>
      </details>
      <p class="quick-entry-said" role="status">
        {said}
      </p>
    </form>
  );
}

interface ClockBoxProps {
  clock: string;
  problem: ClockProblem | null;
  waking: boolean;
  onClock: (clock: string) => void;
}

function ClockBox({ clock, problem, waking, onClock }: ClockBoxProps) {
  return (
    <FieldFrame
      id="quick-entry-clock"
      label={say.time}
      hint={say.blankNow}
      problem={problem ? clockProblemWords(problem, clock.slice(0, 20)) : undefined}
    >
      <input
        id="quick-entry-clock"
        class="field-input field-clock"
        type="text"
        inputMode="numeric"
        autocomplete="off"
        maxLength={20}
        placeholder={say.now}
        value={clock}
        readOnly={waking}
        aria-invalid={problem ? 'true' : undefined}
        aria-describedby="quick-entry-clock-says"
        onInput={(event) => onClock(event.currentTarget.value)}
      />
    </FieldFrame>
  );
}
