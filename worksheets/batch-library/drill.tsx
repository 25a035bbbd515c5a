import { batchesWithLot, type Traced } from '@larderwright/calc/batch';
import { useContext, useMemo, useState } from 'preact/hooks';
import * as say from '#words/batch-library/drill.ts';
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
        <p class="say">{say.typeLotOffLabelSuppliersLetter}</p>
        <div class="fields">
          <FieldFrame id="find-lot" label={say.lot} hint={say.wholeLotBeginningDashesSpaces}>
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
              {say.allFoundStopTheClock}
            </button>
          ) : (
            <button type="button" onClick={() => setRun({ lot, startedAt: nowIso(), endedAt: null })}>
              {say.startADrill}
            </button>
          )}
          <button type="button" onClick={() => print()}>
            {say.print}
          </button>
        </p>
        <p role="status">
          {asked
            ? found.length === 0
              ? say.noBatchDeviceHoldsNoProof
              : say.batchEsHoldIt(found.length)
            : ''}
          {run
            ? run.endedAt
              ? say.timeTaken(takenWords(run.startedAt, run.endedAt))
              : say.theClockRuns
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
        <section class="sheet-desk drill-paper" aria-label={say.theDrillAsItPrints} tabindex={0}>
          <PrintCard
            title={say.recallWhereALotWent}
            head={BLANK_HEAD}
            number={null}
            paper={paper}
            stops={[]}
            standing={standing}
            noRules={say.noRuleIsJudgedHere}
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
          <span key={`${name} ${lot}`}>{[name, say.lot2(lot), amount].filter(Boolean).join(', ')}</span>
        ))}
        {through === null ? null : <strong>{say.throughBatch(through)}</strong>}
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
