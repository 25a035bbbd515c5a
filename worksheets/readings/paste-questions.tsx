import type { PastedLog, PasteIssueCode } from '@larderwright/calc/probe-log';
import { useId } from 'preact/hooks';
import * as say from '#words/readings/paste-questions.ts';
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
        label={say.scale}
        value={answers.unit}
        empty={say.asTheLogSays}
        choices={[
          { value: 'C', label: '°C' },
          { value: 'F', label: '°F' },
        ]}
        onChoose={(unit) => onAnswer({ unit: unit as PasteAnswers['unit'] })}
      />
      <div class="field">
        <label class="field-label" for={dayId}>
          {say.dayOfTheFirstReading}
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
        <p class="field-hint">{say.neededWhereLogHasClockTimes}</p>
      </div>
      <ChoiceField
        label={say.times}
        value={answers.times}
        empty={say.asTheLogSays}
        choices={[
          { value: 'clock', label: say.timeOfDay },
          { value: 'elapsed', label: say.timeSinceTheStart },
        ]}
        onChoose={(chosen) => onAnswer({ times: chosen as PasteAnswers['times'] })}
      />
      {elapsed ? (
        <>
          <MomentBox
            label={say.theLogWasStarted}
            iso={answers.startsAt}
            onMoment={(startsAt) => onAnswer({ startsAt })}
          />
          <ChoiceField
            label={say.countedIn}
            value={answers.elapsedUnit}
            empty={say.asTheHeadingSaysElseMinutes}
            choices={[
              { value: 's', label: say.seconds },
              { value: 'min', label: say.minutes },
              { value: 'h', label: say.hours },
            ]}
            onChoose={(unit) => onAnswer({ elapsedUnit: unit as PasteAnswers['elapsedUnit'] })}
          />
        </>
      ) : null}
      {asked === 'date-order-needed' || answers.dateOrder !== '' ? (
        <ChoiceField
          label={say.inADateSuchAs4}
          value={answers.dateOrder}
          empty={say.notSaid}
          choices={[
            { value: 'day-month', label: say.theDayComesFirst4March },
            { value: 'month-day', label: say.theMonthComesFirstApril3 },
          ]}
          onChoose={(order) => onAnswer({ dateOrder: order as PasteAnswers['dateOrder'] })}
        />
      ) : null}
    </div>
  );
}
