import type { PastedLog, PasteLook } from '@larderwright/calc/probe-log';
import type { ProbeReading } from '@larderwright/calc/process';
import { useEffect, useId, useState } from 'preact/hooks';
import * as say from '#words/readings/import-log.ts';
import { benchNow, benchZone } from '../state/bench-clock.ts';
import { newId } from '../state/clock.ts';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { pasteIssueWords } from '../words/paste.ts';
import { ColumnMap } from './column-map.tsx';
import { addReadings } from './edits.ts';
import { ImportPreview } from './import-preview.tsx';
import type { PasteRead } from './paste-job.ts';
import { PasteQuestions } from './paste-questions.tsx';
import { readBeside } from './read-beside.ts';
import { NO_ANSWERS, type PasteAnswers, pasteOptions } from './read-paste.ts';

/** A big paste is read once the hand has stopped. */
const READ_AFTER_MS = 250;
/** Larger files are refused before they are read into memory. */
const MOST_BYTES = 16_000_000;
/** A longer paste is taken out of the box: a browser can hardly move in it. */
const MOST_SHOWN = 200_000;

/** A text that is not shown in the box: a file, or a paste too long to be looked at there. */
interface Held {
  name: string;
  text: string;
  fromFile: boolean;
}

interface ImportLogProps {
  logId: string;
  logName: string;
}

/** Takes a logger's file or a pasted log. What was understood is shown before a single reading is taken. */
export function ImportLog({ logId, logName }: ImportLogProps) {
  const id = useId();
  const waking = useShared($life) === 'waking';
  const [text, setText] = useState('');
  const [held, setHeld] = useState<Held | null>(null);
  const [problem, setProblem] = useState('');
  const [answers, setAnswers] = useState<PasteAnswers>(NO_ANSWERS);
  const [read, setRead] = useState<PasteRead | null>(null);
  /** Kept while the log is read again, so that the choice just made does not vanish. */
  const [look, setLook] = useState<PasteLook | null>(null);
  const [said, setSaid] = useState('');

  const source = held?.text ?? text;
  useEffect(() => {
    setRead(null);
    if (source.trim() === '') return;
    const leaving = new AbortController();
    const timer = setTimeout(async () => {
      const job = { text: source, options: pasteOptions(answers, benchZone(), Date.now()) };
      const done = await readBeside(job, leaving.signal);
      if (!leaving.signal.aborted) {
        setRead(done);
        setLook(done.look);
      }
    }, READ_AFTER_MS);
    return () => {
      leaving.abort();
      clearTimeout(timer);
    };
  }, [source, answers]);

  const clear = () => {
    setText('');
    setHeld(null);
    setProblem('');
    setAnswers(NO_ANSWERS);
    setLook(null);
  };
  const load = async (chosen: File | undefined) => {
    if (!chosen) return;
    setSaid('');
    if (chosen.size > MOST_BYTES) {
      setProblem(say.tooLargeReadHereLoadPart(chosen.name));
      return;
    }
    try {
      setHeld({ name: chosen.name, text: await chosen.text(), fromFile: true });
      setProblem('');
    } catch {
      setProblem(say.couldNotBeReadFromThis(chosen.name));
    }
  };
  const onPaste = (box: HTMLTextAreaElement) => {
    setSaid('');
    setProblem('');
    if (box.value.length <= MOST_SHOWN) {
      setText(box.value);
      return;
    }
    setHeld({ name: say.thePastedText, text: box.value, fromFile: false });
    setText('');
    box.value = '';
  };
  const take = (log: PastedLog) => {
    // A file does not say when it was typed; a paste was put in now.
    const enteredAt = held?.fromFile ? null : benchNow();
    const readings = log.readings.map(
      (row): ProbeReading => ({
        id: newId(),
        at: row.at,
        temperature: row.temperature,
        enteredAt,
        initials: '',
        excluded: null,
      }),
    );
    addReadings(logId, readings);
    clear();
    setSaid(say.readingsTakenInto(readings.length, logName));
  };

  return (
    <details class="import">
      <summary>{say.pasteALogOrLoadA}</summary>
      <div class="field">
        <label class="field-label" for={id}>
          {say.oneReadingLineTimeThen}
        </label>
        <textarea
          id={id}
          class="field-input import-text"
          rows={6}
          spellcheck={false}
          value={text}
          readOnly={waking || held !== null}
          onInput={(event) => onPaste(event.currentTarget)}
        />
        <p class="field-hint">{say.such1415684Columns}</p>
      </div>
      <p>
        <label>
          {say.orAFile}{' '}
          <input
            type="file"
            accept=".csv,.txt,.tsv,text/*"
            disabled={waking}
            onChange={(event) => {
              void load(event.currentTarget.files?.[0]);
              // The same file may be chosen again after it was changed.
              event.currentTarget.value = '';
            }}
          />
        </label>
      </p>
      {held ? (
        <p class="import-held">
          {say.characters(<strong>{held.name}</strong>, held.text.length)}{' '}
          <button type="button" onClick={clear}>
            {say.putItAway}
          </button>
        </p>
      ) : null}
      {problem ? <p class="field-problem">{problem}</p> : null}
      {source.trim() === '' ? null : (
        <PasteQuestions
          answers={answers}
          asked={read?.issue?.code ?? null}
          times={read?.log?.times ?? null}
          onAnswer={(part) => setAnswers({ ...answers, ...part })}
        />
      )}
      {source.trim() !== '' && look && look.columns.length > 1 ? (
        <ColumnMap look={look} answers={answers} onAnswer={(part) => setAnswers({ ...answers, ...part })} />
      ) : null}
      <div aria-live="polite">
        {source.trim() !== '' && read === null ? <p class="not-yet">{say.readingTheLog}</p> : null}
        {read?.issue ? <p class="field-problem">{pasteIssueWords(read.issue)}</p> : null}
        {read?.log ? <ImportPreview log={read.log} logName={logName} onTake={take} /> : null}
        {said ? <p>{said}</p> : null}
      </div>
    </details>
  );
}
