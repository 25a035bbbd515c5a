import type { ReadDevicePart } from '@larderwright/calc/exchange';
import * as say from '#words/records-desk/incoming-table.ts';
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
      return say.notOnThisDeviceYet;
    case 'same':
      return say.deviceAlreadySameLetterTaken;
    case 'differs':
      return say.deviceAlreadyDifferentTaken;
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
        <strong>{name}:</strong>{' '}
        {say.batchesNothingIsTakenInYet2(
          incoming.length,
          unreadable > 0 ? say.ofThemNotToBeRead2(unreadable) : '',
        )}
      </p>
      {incoming.length > 0 ? (
        <section class="desk-incoming" tabindex={0} aria-label={say.batchesInTheFile}>
          <table>
            <thead>
              <tr>
                <th scope="col">{say.takeIn}</th>
                <th scope="col">{say.batch}</th>
                <th scope="col">{say.lastEdited}</th>
                <th scope="col">{say.againstThisDevice}</th>
              </tr>
            </thead>
            <tbody>
              {shown.map((each) => {
                const title = each.read.clue.name || say.batchOfTheFileUnnamed2(each.place);
                return (
                  <tr key={each.place} data-incoming={each.state}>
                    <td>
                      <label class="desk-tick">
                        <input
                          type="checkbox"
                          checked={each.taken}
                          disabled={each.state === 'unreadable'}
                          aria-label={say.takeIn4(title)}
                          onChange={(event) => tick(each.place, event.currentTarget.checked)}
                        />
                      </label>
                    </td>
                    <th scope="row">
                      {title}
                      {each.read.clue.batchNo ? ` · ${each.read.clue.batchNo}` : ''}
                      {each.read.ok && each.read.batch.demo ? say.demoInvented : ''}
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
      {incoming.length > MOST_ROWS ? <p>{say.andMoreTickedInTheSame2(incoming.length - MOST_ROWS)}</p> : null}
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
            : say.takeIn5(takenWords(taken, takenOvens))}
        </button>
        <button type="button" onClick={onLeave}>
          {say.leaveTheFile}
        </button>
      </p>
    </div>
  );
}
