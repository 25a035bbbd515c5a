import type { PastedLog, PasteIssue } from '@larderwright/calc/probe-log';
import type { ProbeReading } from '@larderwright/calc/process';
import { useEffect, useId, useState } from 'preact/hooks';
import { benchNow, benchZone } from '../state/bench-clock.ts';
import { newId } from '../state/clock.ts';
import { $life } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { pasteIssueWords } from '../words/paste.ts';
import { addReadings } from './edits.ts';
import { ImportPreview } from './import-preview.tsx';
import { PasteQuestions } from './paste-questions.tsx';
import { coreColumns, NO_ANSWERS, type PasteAnswers, pasteOptions } from './read-paste.ts';

type Parser = typeof import('@larderwright/calc/probe-log');

/** A big paste is read once the hand has stopped. */
const READ_AFTER_MS = 250;
/** Larger files are refused before they are read into memory. */
const MOST_BYTES = 16_000_000;

interface Read {
  log: PastedLog | null;
  issue: PasteIssue | null;
  columns: readonly { index: number; heading: string }[];
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
  const [file, setFile] = useState<{ name: string; problem: string } | null>(null);
  const [answers, setAnswers] = useState<PasteAnswers>(NO_ANSWERS);
  const [read, setRead] = useState<Read | null>(null);
  const [said, setSaid] = useState('');

  useEffect(() => {
    setRead(null);
    if (text.trim() === '') return;
    let stale = false;
    const timer = setTimeout(async () => {
      const parser = await import('@larderwright/calc/probe-log');
      if (!stale) setRead(readWith(parser, text, answers));
    }, READ_AFTER_MS);
    return () => {
      stale = true;
      clearTimeout(timer);
    };
  }, [text, answers]);

  const load = async (chosen: File | undefined) => {
    if (!chosen) return;
    if (chosen.size > MOST_BYTES) {
      setFile({ name: chosen.name, problem: 'is too large to be read here. Load a part of it.' });
      return;
    }
    try {
      setText(await chosen.text());
      setFile({ name: chosen.name, problem: '' });
    } catch {
      setFile({ name: chosen.name, problem: 'could not be read from this device.' });
    }
  };
  const take = (log: PastedLog) => {
    const enteredAt = file && file.problem === '' ? null : benchNow();
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
    setSaid(`${readings.length} readings taken into ${logName}.`);
    setText('');
    setFile(null);
    setAnswers(NO_ANSWERS);
  };

  return (
    <details class="import">
      <summary>Paste a log, or load a logger's file</summary>
      <div class="field">
        <label class="field-label" for={id}>
          One reading a line: time, then temperature
        </label>
        <textarea
          id={id}
          class="field-input import-text"
          rows={6}
          spellcheck={false}
          value={text}
          readOnly={waking}
          onInput={(event) => {
            setFile(null);
            setSaid('');
            setText(event.currentTarget.value);
          }}
        />
        <p class="field-hint">
          Such as "14:15 68.4". Columns may be parted by tabs, semicolons, commas or spaces; dates, headings
          and further columns may stand there.
        </p>
      </div>
      <p>
        <label>
          or a file{' '}
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
        {file ? (
          <span class={file.problem ? 'field-problem' : undefined}>
            {' '}
            {file.name} {file.problem}
          </span>
        ) : null}
      </p>
      {text.trim() === '' ? null : (
        <PasteQuestions
          answers={answers}
          asked={read?.issue?.code ?? null}
          times={read?.log?.times ?? null}
          columns={read?.columns ?? []}
          onAnswer={(part) => setAnswers({ ...answers, ...part })}
        />
      )}
      <div aria-live="polite">
        {text.trim() !== '' && read === null ? <p class="not-yet">Reading the log …</p> : null}
        {read?.issue ? <p class="field-problem">{pasteIssueWords(read.issue)}</p> : null}
        {read?.log ? <ImportPreview log={read.log} logName={logName} onTake={take} /> : null}
        {said ? <p>{said}</p> : null}
      </div>
    </details>
  );
}

function readWith({ parseProbeLog }: Parser, text: string, answers: PasteAnswers): Read {
  const options = pasteOptions(answers, benchZone(), Date.now());
  const result = parseProbeLog(text, options);
  const several = answers.column !== '' || (!result.ok && result.issue.code === 'which-column');
  const columns = several ? coreColumns(parseProbeLog, text, options) : [];
  return result.ok
    ? { log: result.value, issue: null, columns }
    : { log: null, issue: result.issue, columns };
}
