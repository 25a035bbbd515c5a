import type { PasteWarning, PasteWarningCode } from '@larderwright/calc/probe-log';
import { pasteWarningWords } from '../words/paste.ts';

/** Remarks shown at once, and the most that are listed one by one. */
const SHOWN = 20;
const MOST_LISTED = 1_000;

const COUNTED: Partial<Record<PasteWarningCode, (count: number) => string>> = {
  'row-not-read': (count) => `${count} ${count === 1 ? 'line' : 'lines'} left out: no time to be read`,
  'temperature-blank': (count) => `${count} kept without a temperature`,
  'temperature-not-read': (count) => `${count} kept with a temperature that cannot be read`,
  'clock-went-back': (count) => `${count} times the clock went back`,
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
          <summary>{rest.length} more remarks</summary>
          <ul class="import-warnings">
            {rest.map((warning) => (
              <Line key={key(warning)} warning={warning} />
            ))}
            {warnings.length > MOST_LISTED ? (
              <li>and {warnings.length - MOST_LISTED} more of the same kinds. Mend the file first.</li>
            ) : null}
          </ul>
        </details>
      ) : null}
    </>
  );
}
