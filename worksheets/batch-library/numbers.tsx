import { DEFAULT_NUMBER_SCHEME, type SchemeProblem, schemeProblem } from '@larderwright/calc/batch';
import { useEffect, useState } from 'preact/hooks';
import * as say from '#words/batch-library/numbers.ts';
import { FieldFrame } from '../parts/field-frame.tsx';
import { keepNumberScheme, nextNumber, numberScheme } from '../state/batch-numbers.ts';

const PROBLEM: Readonly<Record<SchemeProblem, (part: string) => string>> = {
  'no-counter': () => say.nothingCountsTwoBatchesDay,
  'two-counters': () => say.onlyOnePartMayCountA,
  'unknown-part': (part) => say.notKnownHereWhatCanStand(part),
  'open-brace': () => say.aBraceIsNotClosed,
  'too-long': () => say.thatIsTooLongForA,
};

/** The kitchen's own scheme for batch numbers. */
export function Numbers() {
  const [scheme, setScheme] = useState('');
  const [next, setNext] = useState('');
  const look = () => nextNumber().then(setNext, () => setNext(''));
  useEffect(() => {
    numberScheme().then(setScheme, () => setScheme(DEFAULT_NUMBER_SCHEME));
    void look();
  }, []);
  const problem = scheme === '' ? null : schemeProblem(scheme);
  const type = (text: string) => {
    setScheme(text);
    if (text !== '' && schemeProblem(text) === null) keepNumberScheme(text).then(look, () => {});
  };
  return (
    <section aria-labelledby="numbers">
      <h2 id="numbers">{say.batchNumbers}</h2>
      <div class="fields">
        <FieldFrame
          id="number-scheme"
          label={say.yourScheme}
          problem={problem ? PROBLEM[problem.problem](problem.part) : undefined}
          readBack={problem || next === '' ? undefined : say.nextOne(next)}
          hint={say.yyyyYyMmDdDateDdd}
        >
          <input
            id="number-scheme"
            class="field-input field-words"
            type="text"
            value={scheme}
            autocomplete="off"
            spellcheck={false}
            aria-invalid={problem ? 'true' : undefined}
            aria-describedby="number-scheme-says"
            onInput={({ currentTarget }) => type(currentTarget.value)}
          />
        </FieldFrame>
      </div>
      <p class="say">{say.batchWithoutNumberOfferedNext}</p>
    </section>
  );
}
