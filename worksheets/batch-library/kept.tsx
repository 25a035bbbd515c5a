import { useContext, useEffect, useState } from 'preact/hooks';
import { wallOf } from '../parts/clock-text.ts';
import { Links } from '../parts/links.ts';
import { type BackupState, backUpAll, backupState, lastBackup } from '../state/backup.ts';
import { type Persistence, persistence, roomLeft } from '../state/persist.ts';
import { BIN_DAYS, dropAside, retryAside, type Shelf } from '../state/shelf.ts';
import { lookAgain, nameOf, putBack } from './shelf-store.ts';

const PROMISE: Readonly<Record<Persistence, string>> = {
  promised: 'The browser has promised not to clear it by itself.',
  'not-promised':
    'The browser may clear it when the disk runs full, or after weeks without a visit. Back up, and use this site often or install it.',
  unknown: 'The browser does not say whether it may clear it. Back up.',
};

const megabytes = (bytes: number) =>
  bytes < 1e5 ? 'under 0.1 MB' : `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0)} MB`;
const day = (iso: string) => wallOf(iso)?.date ?? iso.slice(0, 10);

/** How safe what is kept here is: the backup, the browser's promise, the bin, and records nobody could read. */
export function Kept({ shelf }: { shelf: Shelf }) {
  return (
    <section aria-labelledby="kept">
      <h2 id="kept">Kept on this device</h2>
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
        `${saved} batch${saved === 1 ? '' : 'es'} saved to a file. Keep it away from this device.` +
          (unreadable > 0 ? ` ${unreadable} could not be read and are not in it.` : ''),
      );
    } catch {
      setSaid('The file could not be made.');
    }
  };
  if (!state) return null;
  const last = state.lastAt === null ? 'Never backed up.' : `Last backed up ${day(state.lastAt)}.`;
  return (
    <>
      <p>
        {state.due ? <strong>Back up. </strong> : null}
        {last}{' '}
        {state.changed === 0
          ? 'Nothing has changed since.'
          : `${state.changed} batch${state.changed === 1 ? ' has' : 'es have'} changed since.`}
      </p>
      <p class="buttons">
        <button type="button" disabled={shelf.batches.length === 0} onClick={() => void save()}>
          Save all batches to a file
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
      {room
        ? ` ${megabytes(room.usedBytes)} used, ${megabytes(room.ofBytes - room.usedBytes)} free for it.`
        : null}
    </p>
  );
}

function Bin({ shelf }: { shelf: Shelf }) {
  if (shelf.bin.length === 0) return null;
  return (
    <>
      <h3>Deleted</h3>
      <p class="say">
        Whole for {BIN_DAYS} days, then gone. Your authority may ask for records longer than that.
      </p>
      <ul class="shelf">
        {shelf.bin.map(({ id, at, shelved }) => {
          const name = shelved ? nameOf(shelved) : id;
          return (
            <li class="shelf-row" key={id}>
              <p class="shelf-what">{name}</p>
              <p class="shelf-day">deleted {day(at)}</p>
              <p class="shelf-tools">
                <button type="button" aria-label={`Put back ${name}`} onClick={() => void putBack(id)}>
                  Put back
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
    setSaid(read ? 'It can be read again and is back in the list.' : 'It still cannot be read.');
    if (read) await lookAgain();
  };
  return (
    <>
      <h3>Set aside</h3>
      <p class="say">
        These records could not be read. They were not changed. Save them before you throw them away.
      </p>
      <p role="status">{said}</p>
      <ul class="shelf">
        {shelf.aside.map(({ id, at, raw }) => (
          <li class="shelf-row" key={id}>
            <p class="shelf-what">{clue(raw) || id}</p>
            <p class="shelf-day">set aside {day(at)}</p>
            <p class="shelf-tools">
              <button type="button" onClick={() => void saveAside(id, raw)}>
                Save to a file
              </button>
              <button type="button" onClick={() => void retry(id)}>
                Try again
              </button>
              <button type="button" onClick={() => void dropAside(id).then(lookAgain)}>
                Throw away
              </button>
            </p>
            <details>
              <summary>What it holds</summary>
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
