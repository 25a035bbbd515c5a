import type { ReadDevicePart } from '@larderwright/calc/exchange';
import { useId, useState } from 'preact/hooks';
import * as say from '#words/records-desk/bring-in.ts';
import { newRecordId } from '../state/clock.ts';
import { keptSetting } from '../state/kept-setting.ts';
import { addOvens, keptOvens } from '../state/oven-records.ts';
import { addRecords, putOnBench } from '../state/storage.ts';
import { DEVICE_PART_WORDS, takenWords } from '../words/device-part.ts';
import { fileProblemWords, MOST_FILE_WORDS } from '../words/records.ts';
import { compareIncoming, type Incoming, takenBatches } from './incoming.ts';
import { compareOvens, type IncomingOven } from './incoming-ovens.ts';
import { IncomingTable } from './incoming-table.tsx';
import { takeKitchen } from './kitchen-offer.tsx';
import { readFile } from './read-file.ts';
import type { Shelf } from './shelf.ts';

interface BringInProps {
  shelf: Shelf;
  /** Where a batch on the bench is looked at. */
  sheet: string;
  onTaken: () => Promise<void>;
}

type Stage =
  | { at: 'waiting' }
  | { at: 'reading'; done: number; all: number }
  | { at: 'refused'; words: string }
  | {
      at: 'shown';
      name: string;
      incoming: readonly Incoming[];
      device: ReadDevicePart;
      ovens: readonly IncomingOven[];
      /** Whether the settings in the file are wanted. */
      kitchen: boolean;
    }
  | { at: 'taken'; words: string; ids: readonly string[] };

/** The table with the button that was pressed is gone: the reader goes on at what came of it. */
const takeFocus = (said: HTMLElement | null) => said?.focus();

/** Batches out of a file: shown first, taken in when the person says so. */
export function BringIn({ shelf, sheet, onTaken }: BringInProps) {
  const id = useId();
  const [stage, setStage] = useState<Stage>({ at: 'waiting' });

  const open = async (file: File | undefined) => {
    if (!file) return;
    setStage({ at: 'reading', done: 0, all: 0 });
    try {
      const read = await readFile(file, (done, all) => setStage({ at: 'reading', done, all }));
      if (!read.ok) setStage({ at: 'refused', words: `${file.name}: ${fileProblemWords(read)}` });
      else
        setStage({
          at: 'shown',
          name: file.name,
          incoming: compareIncoming(read.records, shelf.raw),
          device: read.device,
          ovens: compareOvens(read.device.ovens, keptOvens()),
          // Settings that are here already are replaced only when the person says so.
          kitchen: read.device.kitchen?.ok === true && keptSetting('version') === undefined,
        });
    } catch {
      setStage({ at: 'refused', words: say.couldNotBeReadFromThis2(file.name) });
    }
  };
  const take = async ({ incoming, ovens, device, kitchen }: Extract<Stage, { at: 'shown' }>) => {
    const batches = takenBatches(incoming, newRecordId);
    const left = incoming.length - batches.length;
    try {
      await addRecords(batches, device.archived);
    } catch (error) {
      const detail = error instanceof Error ? error.message : String(error);
      setStage({ at: 'refused', words: say.deviceDidNotTakeNothingChanged2(detail) });
      return;
    }
    const wanted = ovens.flatMap(({ oven, taken }) => (taken ? [oven] : []));
    const kept = wanted.length === 0 ? 0 : addOvens(wanted);
    const lost = wanted.length - kept;
    const settings = kitchen && device.kitchen?.ok ? takeKitchen(device.kitchen.kitchen) : '';
    await onTaken();
    setStage({
      at: 'taken',
      ids: batches.map((batch) => batch.id),
      words: say.takenWhatDevice2(
        kept > 0 ? takenWords(batches.length, kept) : batches.length,
        left > 0 ? say.leftOut2(left) : '',
        lost > 0 ? DEVICE_PART_WORDS.noRoom(lost) : '',
        settings,
      ),
    });
  };
  const goTo = async (batchId: string) => {
    await putOnBench(batchId);
    location.assign(sheet);
  };

  return (
    <>
      <div class="field">
        <label class="field-label" for={id}>
          {say.fileBatchesSavedPageAnother}
        </label>
        <input
          id={id}
          class="desk-file"
          type="file"
          accept=".json,application/json"
          onChange={(event) => {
            void open(event.currentTarget.files?.[0]);
            // The same file may be chosen again after it was mended.
            event.currentTarget.value = '';
          }}
        />
        <p class="field-hint">{say.mostNothingTakenBeforeHaveSeen2(MOST_FILE_WORDS)}</p>
      </div>
      <div aria-live="polite">
        {stage.at === 'reading' ? (
          <p class="not-yet">
            {say.readingTheFile2(stage.all > 0 ? say.ofBatches2(stage.done, stage.all) : '')}
          </p>
        ) : null}
        {stage.at === 'refused' ? <p class="field-problem">{stage.words}</p> : null}
        {stage.at === 'taken' ? (
          <>
            <p ref={takeFocus} tabindex={-1}>
              <strong>{stage.words}</strong>
            </p>
            {stage.ids.length === 1 ? (
              <p class="buttons">
                <button type="button" onClick={() => void goTo(stage.ids[0] ?? '')}>
                  {say.layItOnTheBench}
                </button>
              </p>
            ) : null}
          </>
        ) : null}
      </div>
      {stage.at === 'shown' ? (
        <IncomingTable
          name={stage.name}
          incoming={stage.incoming}
          onChange={(incoming) => setStage({ ...stage, incoming })}
          device={stage.device}
          ovens={stage.ovens}
          onOvens={(ovens) => setStage({ ...stage, ovens })}
          kitchen={stage.kitchen}
          onKitchen={(kitchen) => setStage({ ...stage, kitchen })}
          onTake={() => void take(stage)}
          onLeave={() => setStage({ at: 'waiting' })}
        />
      ) : null}
    </>
  );
}
