import { DEFAULT_NUMBER_SCHEME, type SchemeProblem, schemeProblem } from '@larderwright/calc/batch';
import { useEffect, useState } from 'preact/hooks';
import { FieldFrame } from '../parts/field-frame.tsx';
import { keepNumberScheme, nextNumber, numberScheme } from '../state/batch-numbers.ts';

const PROBLEM: Readonly<Record<SchemeProblem, (part: string) => string>> = {
  'no-counter': () => 'Nothing in it counts: two batches of a day would share a number. Add {A} or {NN}.',
  'two-counters': () => 'Only one part may count: {A} or {NN}.',
  'unknown-part': (part) => `{${part}} is not known here. What can stand in braces is listed below.`,
  'open-brace': () => 'A brace is not closed.',
  'too-long': () => 'That is too long for a label.',
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
      <h2 id="numbers">Batch numbers</h2>
      <div class="fields">
        <FieldFrame
          id="number-scheme"
          label="Your scheme"
          problem={problem ? PROBLEM[problem.problem](problem.part) : undefined}
          readBack={problem || next === '' ? undefined : `Next one: ${next}`}
          hint="{YYYY} {YY} {MM} {DD} date, {DDD} day of the year, {A} letter, {N} {NN} {NNN} count. All else stands as typed."
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
      <p class="say">
        A batch without a number is offered the next one on its worksheets. A number of a deleted batch is not
        given again while the batch can be put back.
      </p>
    </section>
  );
}
