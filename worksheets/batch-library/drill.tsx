import { batchesWithLot, type Traced } from '@larderwright/calc/batch';
import { useContext, useMemo, useState } from 'preact/hooks';
import { usePaper } from '../batch-sheet/use-paper.ts';
import { BLANK_HEAD } from '../parts/blank-head.ts';
import { CardBlocks } from '../parts/card-blocks.tsx';
import { FieldFrame } from '../parts/field-frame.tsx';
import { Links } from '../parts/links.ts';
import { PrintCard } from '../parts/print-card.tsx';
import { nowIso } from '../state/clock.ts';
import type { Shelved } from '../state/database.ts';
import { STATE_WORDS } from '../words/states.ts';
import { type DrillRun, drillBlocks, takenWords, wentTo } from './drill-card.ts';
import { nameOf } from './shelf-store.ts';

/** Every batch that holds a lot and where it went, with the clock of a drill and its paper. */
export function Drill({ batches, standing }: { batches: readonly Shelved[]; standing: string }) {
  const [lot, setLot] = useState('');
  const [run, setRun] = useState<DrillRun | null>(null);
  const [paper] = usePaper();
  const found = useMemo(() => batchesWithLot(batches, lot), [batches, lot]);
  const asked = lot.trim() !== '';
  const type = (text: string) => {
    setLot(text);
    if (run && run.endedAt === null) setRun({ ...run, lot: text });
    else if (run) setRun(null);
  };
  return (
    <>
      <div class="no-print">
        <p class="say">
          Type a lot off a label or a supplier’s letter, or the number of one of your own batches. A drill
          once a year shows whether the records hold: start the clock, find everything, stop it, print.
        </p>
        <div class="fields">
          <FieldFrame
            id="find-lot"
            label="Lot"
            hint="The whole lot or its beginning. Dashes and spaces do not matter."
          >
            <input
              id="find-lot"
              class="field-input field-words"
              type="text"
              value={lot}
              autocomplete="off"
              spellcheck={false}
              aria-describedby="find-lot-says"
              onInput={({ currentTarget }) => type(currentTarget.value)}
            />
          </FieldFrame>
        </div>
        <p class="buttons">
          {run && run.endedAt === null ? (
            <button type="button" class="press-first" onClick={() => setRun({ ...run, endedAt: nowIso() })}>
              All found: stop the clock
            </button>
          ) : (
            <button type="button" onClick={() => setRun({ lot, startedAt: nowIso(), endedAt: null })}>
              Start a drill
            </button>
          )}
          <button type="button" onClick={() => print()}>
            Print
          </button>
        </p>
        <p role="status">
          {asked
            ? found.length === 0
              ? 'No batch on this device holds it. That is no proof: a lot that nobody wrote down is not found.'
              : `${found.length} batch${found.length === 1 ? ' holds' : 'es hold'} it.`
            : ''}
          {run
            ? run.endedAt
              ? ` Time taken: ${takenWords(run.startedAt, run.endedAt)}.`
              : ' The clock runs.'
            : ''}
        </p>
        {found.length > 0 ? (
          <ul class="shelf">
            {found.map((traced) => (
              <FoundRow key={traced.batch.id} traced={traced} />
            ))}
          </ul>
        ) : null}
      </div>
      {asked || run ? (
        <section class="sheet-desk drill-paper" aria-label="The drill as it prints" tabindex={0}>
          <PrintCard
            title="Recall: where a lot went"
            head={BLANK_HEAD}
            number={null}
            paper={paper}
            stops={[]}
            standing={standing}
            noRules="No rule is judged here"
          >
            <CardBlocks blocks={drillBlocks(found, run ?? { lot, startedAt: nowIso(), endedAt: null })} />
          </PrintCard>
        </section>
      ) : null}
    </>
  );
}

function FoundRow({ traced }: { traced: Traced<Shelved> }) {
  const { worksheets } = useContext(Links);
  const { batch, uses, through } = traced;
  return (
    <li class="shelf-row" data-state={batch.state}>
      <p class="shelf-what">
        <a href={`${worksheets['batch-sheet'] ?? ''}#batch=${encodeURIComponent(batch.id)}`}>
          {nameOf(batch)}
        </a>
        {uses.map(({ name, lot, amount }) => (
          <span key={`${name} ${lot}`}>{[name, `lot ${lot}`, amount].filter(Boolean).join(', ')}</span>
        ))}
        {through === null ? null : <strong>through batch {through}</strong>}
      </p>
      <p class="shelf-day">{batch.day}</p>
      <p class="shelf-state">
        <span class="batch-state" data-state={batch.state}>
          {STATE_WORDS[batch.state]}
        </span>
      </p>
      <p class="shelf-went">
        {wentTo(batch).map((line) => (
          <span key={line}>{line}</span>
        ))}
      </p>
    </li>
  );
}
