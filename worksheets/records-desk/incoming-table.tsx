import type { ReadDevicePart } from '@larderwright/calc/exchange';
import { wallOf } from '../parts/clock-text.ts';
import { KITCHEN_OFFER, takenWords } from '../words/device-part.ts';
import { recordProblemWords } from '../words/records.ts';
import type { Incoming } from './incoming.ts';
import type { IncomingOven } from './incoming-ovens.ts';
import { KitchenOffer } from './kitchen-offer.tsx';
import { OvenTable } from './oven-table.tsx';

/** Rows shown; the rest is counted and taken or left as it is. */
const MOST_ROWS = 200;

interface IncomingTableProps {
  name: string;
  incoming: readonly Incoming[];
  onChange: (incoming: readonly Incoming[]) => void;
  /** What the file holds beside its batches. */
  device: ReadDevicePart;
  ovens: readonly IncomingOven[];
  onOvens: (ovens: readonly IncomingOven[]) => void;
  /** Whether the settings in the file are wanted. */
  kitchen: boolean;
  onKitchen: (wanted: boolean) => void;
  onTake: () => void;
  onLeave: () => void;
}

function standing({ state, read }: Incoming): string {
  switch (state) {
    case 'new':
      return 'Not on this device yet.';
    case 'same':
      return 'On this device already, the same to the letter. Taken in, it would stand there twice.';
    case 'differs':
      return 'On this device already, and different. Taken in, both are kept: this one as a batch of its own.';
    case 'unreadable':
      return recordProblemWords(read);
  }
}

function edited({ read }: Incoming): string {
  const wall = read.ok ? wallOf(read.batch.updatedAt) : null;
  return wall ? `${wall.date} ${wall.clock}` : '';
}

/** What a file holds, against what is here. */
export function IncomingTable(props: IncomingTableProps) {
  const { name, incoming, onChange, device, ovens, onOvens, kitchen, onKitchen, onTake, onLeave } = props;
  const takenOvens = ovens.filter((each) => each.taken).length;
  const taken = incoming.filter((each) => each.taken).length;
  const unreadable = incoming.filter((each) => each.state === 'unreadable').length;
  const shown = incoming.slice(0, MOST_ROWS);
  const tick = (place: number, isTaken: boolean) =>
    onChange(incoming.map((each) => (each.place === place ? { ...each, taken: isTaken } : each)));
  return (
    <div class="import-preview">
      <p>
        <strong>{name}:</strong> {incoming.length} {incoming.length === 1 ? 'batch' : 'batches'}
        {unreadable > 0 ? `, ${unreadable} of them not to be read` : ''}. Nothing is taken in yet.
      </p>
      {incoming.length > 0 ? (
        <section class="desk-incoming" tabindex={0} aria-label="Batches in the file">
          <table>
            <thead>
              <tr>
                <th scope="col">Take in</th>
                <th scope="col">Batch</th>
                <th scope="col">Last edited</th>
                <th scope="col">Against this device</th>
              </tr>
            </thead>
            <tbody>
              {shown.map((each) => {
                const title = each.read.clue.name || `Batch ${each.place} of the file, unnamed`;
                return (
                  <tr key={each.place} data-incoming={each.state}>
                    <td>
                      <label class="desk-tick">
                        <input
                          type="checkbox"
                          checked={each.taken}
                          disabled={each.state === 'unreadable'}
                          aria-label={`Take in ${title}`}
                          onChange={(event) => tick(each.place, event.currentTarget.checked)}
                        />
                      </label>
                    </td>
                    <th scope="row">
                      {title}
                      {each.read.clue.batchNo ? ` · ${each.read.clue.batchNo}` : ''}
                      {each.read.ok && each.read.batch.demo ? ' · DEMO, invented' : ''}
                    </th>
                    <td>{edited(each)}</td>
                    <td>{standing(each)}</td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </section>
      ) : null}
      {incoming.length > MOST_ROWS ? (
        <p>and {incoming.length - MOST_ROWS} more, ticked in the same way.</p>
      ) : null}
      <OvenTable device={device} ovens={ovens} onChange={onOvens} />
      <KitchenOffer read={device.kitchen} wanted={kitchen} onWanted={onKitchen} />
      <p class="buttons">
        <button
          type="button"
          class="button-main"
          disabled={taken + takenOvens === 0 && !kitchen}
          onClick={onTake}
        >
          {taken + takenOvens === 0 && kitchen
            ? KITCHEN_OFFER.alone
            : `Take in ${takenWords(taken, takenOvens)}`}
        </button>
        <button type="button" onClick={onLeave}>
          Leave the file
        </button>
      </p>
    </div>
  );
}
