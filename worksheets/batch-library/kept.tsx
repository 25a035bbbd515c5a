import { useContext, useEffect, useState } from 'preact/hooks';
import * as say from '#words/batch-library/kept.ts';
import { wallOf } from '../parts/clock-text.ts';
import { Links } from '../parts/links.ts';
import { type BackupState, backUpAll, backupState, lastBackup } from '../state/backup.ts';
import { type Persistence, persistence, roomLeft } from '../state/persist.ts';
import { BIN_DAYS, dropAside, retryAside, type Shelf } from '../state/shelf.ts';
import { lookAgain, nameOf, putBack } from './shelf-store.ts';

const PROMISE: Readonly<Record<Persistence, string>> = {
  promised: say.browserHasPromisedNotClear,
  'not-promised': say.browserMayClearWhenDiskRuns,
  unknown: say.browserDoesNotSayWhetherMay,
};

const megabytes = (bytes: number) =>
  bytes < 1e5 ? say.under01Mb : say.mb2((bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0));
const day = (iso: string) => wallOf(iso)?.date ?? iso.slice(0, 10);

/** How safe what is kept here is: the backup, the browser's promise, the bin, and records nobody could read. */
export function Kept({ shelf }: { shelf: Shelf }) {
  return (
    <section aria-labelledby="kept">
      <h2 id="kept">{say.keptOnThisDevice}</h2>
      <Backup shelf={shelf} />
      <Promised />
      <Bin shelf={shelf} />
      <Aside shelf={shelf} />
    </section>
  );
}

function Backup({ shelf }: { shelf: Shelf }) {
  const { schema } = useContext(Links);
  const [state, setState] = useState<BackupState | null>(null);
  const [said, setSaid] = useState('');
  useEffect(() => {
    lastBackup().then(
      (at) => setState(backupState(shelf.batches, at, Date.now())),
      () => {},
    );
  }, [shelf, said]);
  const save = async () => {
    try {
      const { saved, unreadable } = await backUpAll(schema);
      setSaid(
        say.batchEsSavedFileKeepAway2(saved) + (unreadable > 0 ? say.couldNotBeReadAndAre2(unreadable) : ''),
      );
    } catch {
      setSaid(say.theFileCouldNotBeMade);
    }
  };
  if (!state) return null;
  const last = state.lastAt === null ? say.neverBackedUp : say.lastBackedUp2(day(state.lastAt));
  return (
    <>
      <p>
        {state.due ? <strong>{say.backUp} </strong> : null}
        {last}{' '}
        {state.changed === 0 ? say.nothingHasChangedSince : say.batchEsHaveChangedSince2(state.changed)}
      </p>
      <p class="buttons">
        <button type="button" disabled={shelf.batches.length === 0} onClick={() => void save()}>
          {say.saveAllBatchesToAFile}
        </button>
      </p>
      <p role="status">{said}</p>
    </>
  );
}

function Promised() {
  const [promise, setPromise] = useState<Persistence | null>(null);
  const [room, setRoom] = useState<{ usedBytes: number; ofBytes: number } | null>(null);
  useEffect(() => {
    void persistence().then(setPromise);
    void roomLeft().then(setRoom);
  }, []);
  return promise === null ? null : (
    <p class="say">
      {PROMISE[promise]}
      {room ? say.usedFreeForIt2(megabytes(room.usedBytes), megabytes(room.ofBytes - room.usedBytes)) : null}
    </p>
  );
}

function Bin({ shelf }: { shelf: Shelf }) {
  if (shelf.bin.length === 0) return null;
  return (
    <>
      <h3>{say.deleted}</h3>
      <p class="say">{say.wholeDaysThenGoneAuthorityMay2(BIN_DAYS)}</p>
      <ul class="shelf">
        {shelf.bin.map(({ id, at, shelved }) => {
          const name = shelved ? nameOf(shelved) : id;
          return (
            <li class="shelf-row" key={id}>
              <p class="shelf-what">{name}</p>
              <p class="shelf-day">{say.deleted3(day(at))}</p>
              <p class="shelf-tools">
                <button type="button" aria-label={say.putBack3(name)} onClick={() => void putBack(id)}>
                  {say.putBack2}
                </button>
              </p>
            </li>
          );
        })}
      </ul>
    </>
  );
}

async function saveAside(id: string, raw: unknown): Promise<void> {
  const { saveText } = await import('../state/save-file.ts');
  saveText(JSON.stringify(raw, null, 2), `${id}.json`, 'application/json');
}

/** Records that could not be read: whole, to be saved, tried again after an update, or thrown away. */
function Aside({ shelf }: { shelf: Shelf }) {
  const [said, setSaid] = useState('');
  if (shelf.aside.length === 0) return null;
  const retry = async (id: string) => {
    const read = await retryAside(id);
    setSaid(read ? say.canReadAgainBackList : say.itStillCannotBeRead);
    if (read) await lookAgain();
  };
  return (
    <>
      <h3>{say.setAside}</h3>
      <p class="say">{say.theseRecordsCouldNotReadNot}</p>
      <p role="status">{said}</p>
      <ul class="shelf">
        {shelf.aside.map(({ id, at, raw }) => (
          <li class="shelf-row" key={id}>
            <p class="shelf-what">{clue(raw) || id}</p>
            <p class="shelf-day">{say.setAside3(day(at))}</p>
            <p class="shelf-tools">
              <button type="button" onClick={() => void saveAside(id, raw)}>
                {say.saveToAFile}
              </button>
              <button type="button" onClick={() => void retry(id)}>
                {say.tryAgain}
              </button>
              <button type="button" onClick={() => void dropAside(id).then(lookAgain)}>
                {say.throwAway}
              </button>
            </p>
            <details>
              <summary>{say.whatItHolds}</summary>
              <pre class="aside-text">{JSON.stringify(raw, null, 1).slice(0, 20_000)}</pre>
            </details>
          </li>
        ))}
      </ul>
    </>
  );
}

/** Name and number that a broken record still gives away. */
function clue(raw: unknown): string {
  const product = (raw as { product?: { name?: unknown; batchNo?: unknown } } | null)?.product;
  return [product?.name, product?.batchNo]
    .filter((text) => typeof text === 'string' && text !== '')
    .join(', ');
}
