import type { PasteWarning, PasteWarningCode } from '@larderwright/calc/probe-log';
import * as say from '#words/readings/paste-remarks.ts';
import { pasteWarningWords } from '../words/paste.ts';

/** Remarks shown at once, and the most that are listed one by one. */
const SHOWN = 20;
const MOST_LISTED = 1_000;

const COUNTED: Partial<Record<PasteWarningCode, (count: number) => string>> = {
  'row-not-read': (count) => say.linesLeftOutNoTimeTo(count),
  'temperature-blank': (count) => say.keptWithoutATemperature(count),
  'temperature-not-read': (count) => say.keptTemperatureCannotRead(count),
  'clock-went-back': (count) => say.timesTheClockWentBack(count),
};

function Line({ warning }: { warning: PasteWarning }) {
  return <li>{pasteWarningWords(warning)}</li>;
}

/** Every line of a log that was left out or stands in doubt: counted, then one by one. */
export function PasteRemarks({ warnings }: { warnings: readonly PasteWarning[] }) {
  if (warnings.length === 0) return null;
  const counts = Object.entries(COUNTED).flatMap(([code, words]) => {
    const count = warnings.filter((warning) => warning.code === code).length;
    return count > 1 ? [words(count)] : [];
  });
  const rest = warnings.slice(SHOWN, MOST_LISTED);
  const key = ({ code, line, found }: PasteWarning) => `${code} ${line} ${found}`;
  return (
    <>
      {counts.length > 0 ? (
        <p>
          <strong>{counts.join('; ')}.</strong>
        </p>
      ) : null}
      <ul class="import-warnings">
        {warnings.slice(0, SHOWN).map((warning) => (
          <Line key={key(warning)} warning={warning} />
        ))}
      </ul>
      {rest.length > 0 ? (
        <details>
          <summary>{say.moreRemarks(rest.length)}</summary>
          <ul class="import-warnings">
            {rest.map((warning) => (
              <Line key={key(warning)} warning={warning} />
            ))}
            {warnings.length > MOST_LISTED ? (
              <li>{say.moreSameKindsMendFileFirst(warnings.length - MOST_LISTED)}</li>
            ) : null}
          </ul>
        </details>
      ) : null}
    </>
  );
}
