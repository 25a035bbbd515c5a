import { type DecimalMark, safeFileName, writeBatchFile } from '@larderwright/calc/exchange';
import { useId, useState } from 'preact/hooks';
import * as say from '#words/records-desk/hand-on.ts';
import { noteBackup } from '../state/backup.ts';
import { nowIso } from '../state/clock.ts';
import { devicePart } from '../state/device-part.ts';
import { saveText } from '../state/save-file.ts';
import type { DeskLinks } from './desk-links.ts';
import { ShareLink } from './share-link.tsx';
import { batchTitle, type Shelf } from './shelf.ts';
import { TableFiles } from './table-files.tsx';

interface HandOnProps {
  shelf: Shelf;
  /** Id of the batch on the bench. */
  onBench: string | null;
  links: DeskLinks;
}

/** A comma where this device writes one. */
function decimalHere(): DecimalMark {
  return Intl.NumberFormat().format(1.5).includes(',') ? 'comma' : 'point';
}

/** One batch, or all of them, as files; one batch as a link. */
export function HandOn({ shelf, onBench, links }: HandOnProps) {
  const id = useId();
  const [chosen, setChosen] = useState('');
  const [mark, setMark] = useState<DecimalMark>(decimalHere);
  const [said, setSaid] = useState('');
  const { batches, unreadable } = shelf;
  const batch =
    batches.find((each) => each.id === chosen) ?? batches.find((each) => each.id === onBench) ?? batches[0];
  if (!batch) return <p class="say">{say.noBatchLiesDeviceYetBegin}</p>;

  const where = () => ({ schemaAddress: new URL(links.schema, location.href).href, at: nowIso() });
  const save = (name: string, text: string, type: string) => {
    saveText(text, name, type);
    setSaid(say.wasHandedToYourBrowserTo2(name));
  };
  const names = [batch.product.batchNo, batch.product.name];
  return (
    <>
      <div class="field desk-batch">
        <label class="field-label" for={id}>
          {say.batch}
        </label>
        <select
          id={id}
          class="field-choice"
          value={batch.id}
          onChange={(event) => {
            setChosen(event.currentTarget.value);
            setSaid('');
          }}
        >
          {batches.map((each) => (
            <option key={each.id} value={each.id}>
              {batchTitle(each)}
              {each.id === onBench ? say.onTheBench : ''}
            </option>
          ))}
        </select>
      </div>

      <h3>{say.asAFileToKeepOr}</h3>
      <p class="say">{say.wholeRecordNamesSignaturesAll2}</p>
      <p class="buttons">
        <button
          type="button"
          class="button-main"
          onClick={() =>
            save(
              safeFileName([...names, 'batch'], 'json'),
              writeBatchFile([batch], where()),
              'application/json',
            )
          }
        >
          {say.saveThisBatch}
        </button>
        <button
          type="button"
          onClick={() => {
            void devicePart().then((device) => {
              save(
                safeFileName([nowIso().slice(0, 10), 'all-batches'], 'json'),
                writeBatchFile(batches, where(), device),
                'application/json',
              );
              return noteBackup();
            });
          }}
        >
          {batches.length === 1 ? say.saveAllThereIs : say.saveAllBatches2(batches.length)}
        </button>
      </p>
      {unreadable > 0 ? <p class="field-problem">{say.recordsDeviceCannotReadNotFile2(unreadable)}</p> : null}

      <TableFiles batch={batch} names={names} mark={mark} onMark={setMark} onSave={save} />
      <ShareLink key={batch.id} batch={batch} copy={links.copy} />
      <p role="status">{said}</p>
    </>
  );
}
