import type { PastedLog, PasteIssueCode } from '@larderwright/calc/probe-log';
import { useId } from 'preact/hooks';
import { ChoiceField } from '../parts/choice-field.tsx';
import { MomentBox } from '../parts/moment-box.tsx';
import type { PasteAnswers } from './read-paste.ts';

interface PasteQuestionsProps {
  answers: PasteAnswers;
  /** What the log could not be read for. */
  asked: PasteIssueCode | null;
  times: PastedLog['times'] | null;
  onAnswer: (part: Partial<PasteAnswers>) => void;
}

/** What a log does not say of itself. A question stays once it was asked or answered. */
export function PasteQuestions({ answers, asked, times, onAnswer }: PasteQuestionsProps) {
  const dayId = useId();
  const elapsed = answers.times === 'elapsed' || times === 'elapsed' || asked === 'start-needed';
  return (
    <div class="fields">
      <ChoiceField
        label="Scale"
        value={answers.unit}
        empty="As the log says"
        choices={[
          { value: 'C', label: '°C' },
          { value: 'F', label: '°F' },
        ]}
        onChoose={(unit) => onAnswer({ unit: unit as PasteAnswers['unit'] })}
      />
      <div class="field">
        <label class="field-label" for={dayId}>
          Day of the first reading
        </label>
        <div class="field-line">
          <input
            id={dayId}
            class="field-input field-day"
            type="date"
            value={answers.day}
            onChange={(event) => onAnswer({ day: event.currentTarget.value })}
          />
        </div>
        <p class="field-hint">Needed where the log has clock times only. Past midnight is found by itself.</p>
      </div>
      <ChoiceField
        label="Times"
        value={answers.times}
        empty="As the log says"
        choices={[
          { value: 'clock', label: 'Time of day' },
          { value: 'elapsed', label: 'Time since the start' },
        ]}
        onChoose={(chosen) => onAnswer({ times: chosen as PasteAnswers['times'] })}
      />
      {elapsed ? (
        <>
          <MomentBox
            label="The log was started"
            iso={answers.startsAt}
            onMoment={(startsAt) => onAnswer({ startsAt })}
          />
          <ChoiceField
            label="Counted in"
            value={answers.elapsedUnit}
            empty="As the heading says, else minutes"
            choices={[
              { value: 's', label: 'seconds' },
              { value: 'min', label: 'minutes' },
              { value: 'h', label: 'hours' },
            ]}
            onChoose={(unit) => onAnswer({ elapsedUnit: unit as PasteAnswers['elapsedUnit'] })}
          />
        </>
      ) : null}
      {asked === 'date-order-needed' || answers.dateOrder !== '' ? (
        <ChoiceField
          label="In a date such as 4/3"
          value={answers.dateOrder}
          empty="Not said"
          choices={[
            { value: 'day-month', label: 'the day comes first (4 March)' },
            { value: 'month-day', label: 'the month comes first (April 3)' },
          ]}
          onChoose={(order) => onAnswer({ dateOrder: order as PasteAnswers['dateOrder'] })}
        />
      ) : null}
    </div>
  );
}
