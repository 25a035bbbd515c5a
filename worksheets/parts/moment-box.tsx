import type { Finding } from '@larderwright/calc/findings';
import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import * as say from '#words/parts/moment-box.ts';
import { benchMoment, benchNow } from '../state/bench-clock.ts';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { clockProblemWords } from '../words/clock.ts';
import { type ClockProblem, dayWords, wallOf } from './clock-text.ts';
import { FieldFrame } from './field-frame.tsx';

interface MomentBoxProps {
  label: string;
  iso: string | null;
  onMoment: (iso: string | null) => void;
  /** A reading cannot go without its time: emptying the box keeps the last one. */
  required?: boolean;
  /** Offer to take the present moment. */
  offerNow?: boolean;
  /** The day is shown and changed elsewhere. */
  withoutDay?: boolean;
  hint?: ComponentChildren;
  findings?: readonly Finding[] | undefined;
  compact?: boolean;
}

/** Four digits or hour and minute apart: nobody is still typing. */
const WHOLE = /^\s*(?:\d{4}|\d{1,2}[:.h]\d{2})\s*$/;

/** A moment as the time on the wall clock and the day. What cannot be read stays in the box, with the reason. */
export function MomentBox(props: MomentBoxProps) {
  const {
    label,
    iso,
    onMoment,
    required = false,
    offerNow = false,
    withoutDay = false,
    hint,
    findings,
    compact,
  } = props;
  const id = useId();
  const waking = useShared($life) === 'waking';
  const wall = iso === null ? null : wallOf(iso);
  const [typed, setTyped] = useState<string | null>(null);
  const [day, setDay] = useState('');
  const [problem, setProblem] = useState<ClockProblem | null>(null);
  const clock = typed ?? wall?.clock ?? '';
  const date = wall?.date ?? day;

  const take = (clockText: string, dateText: string): boolean => {
    if (clockText.trim() === '') {
      setProblem(required ? 'blank' : null);
      if (!required && iso !== null) onMoment(null);
      return !required;
    }
    const read = benchMoment(dateText, clockText, iso === null ? Date.now() : Date.parse(iso));
    setProblem(read.ok ? null : read.problem);
    if (read.ok && read.iso !== iso) onMoment(read.iso);
    return read.ok;
  };
  const leave = () => {
    if (typed !== null && take(typed, date)) setTyped(null);
  };
  return (
    <FieldFrame
      id={id}
      label={label}
      hint={hint}
      problem={problem ? clockProblemWords(problem, clock.slice(0, 20)) : undefined}
      readBack={date === '' || withoutDay ? undefined : dayWords(date)}
      findings={findings}
      compact={compact}
    >
      <input
        id={id}
        class="field-input field-clock"
        type="text"
        inputMode="numeric"
        autocomplete="off"
        maxLength={20}
        value={clock}
        readOnly={waking}
        aria-invalid={problem ? 'true' : undefined}
        aria-describedby={`${id}-says`}
        onInput={(event) => {
          const text = event.currentTarget.value;
          setTyped(text);
          if (WHOLE.test(text)) take(text, date);
        }}
        onBlur={leave}
        onKeyDown={(event) => {
          if (event.key === 'Enter') leave();
        }}
      />
      {withoutDay ? null : (
        <input
          class="field-input field-day"
          type="date"
          data-blank={date === '' ? 'yes' : undefined}
          aria-label={say.dayOf(label)}
          value={date}
          readOnly={waking}
          onChange={(event) => {
            const next = event.currentTarget.value;
            if (next === '') return;
            setDay(next);
            if (clock.trim() !== '' && take(clock, next)) setTyped(null);
          }}
        />
      )}
      {offerNow && iso === null ? (
        <button
          type="button"
          class="field-now"
          disabled={waking}
          onClick={() => {
            setTyped(null);
            setProblem(null);
            onMoment(benchNow());
          }}
          aria-label={say.now(label)}
        >
          {say.now2}
        </button>
      ) : null}
    </FieldFrame>
  );
}
