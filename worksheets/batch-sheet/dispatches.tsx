import type { Dispatch } from '@larderwright/calc/batch';
import { useState } from 'preact/hooks';
import * as say from '#words/batch-sheet/dispatches.ts';
import { wallOf } from '../parts/clock-text.ts';
import { RemovedRowLine } from '../parts/row-tools.tsx';
import { TextBox } from '../parts/text-box.tsx';
import { newId, nowIso } from '../state/clock.ts';
import { addRow, removeRow } from '../state/rows.ts';
import { useAt } from '../state/use-shared.ts';
import { who } from '../state/who.ts';

const LIST = 'dispatches';
const when = (iso: string) => {
  const wall = wallOf(iso);
  return wall ? `${wall.date} ${wall.clock.slice(0, 5)}` : iso;
};

/** Where the batch went: a recall asks nothing else. */
export function Dispatches() {
  const rows = useAt(LIST) as readonly Dispatch[];
  const [to, setTo] = useState('');
  const [amount, setAmount] = useState('');
  const add = () => {
    const row: Dispatch = { id: newId(), at: nowIso(), to: to.trim(), amount: amount.trim(), by: who() };
    addRow(LIST, row);
    setTo('');
    setAmount('');
  };
  return (
    <>
      <h3>{say.whereItWent}</h3>
      {rows.length > 0 ? (
        <ul class="went">
          {rows.map((row) => (
            <li key={row.id}>
              <span>
                <strong>{row.to}</strong>
                {row.amount ? `, ${row.amount}` : ''}
              </span>
              <small>{[when(row.at), row.by].filter(Boolean).join(', ')}</small>
              <button
                type="button"
                aria-label={say.takeOut(row.to)}
                onClick={() => removeRow(LIST, row.id, row.to)}
              >
                {say.takeOut2}
              </button>
            </li>
          ))}
        </ul>
      ) : null}
      <RemovedRowLine list={LIST} />
      <div class="fields">
        <TextBox label={say.customerCounterStore} text={to} onText={setTo} />
        <TextBox label={say.howMuch} text={amount} onText={setAmount} hint={say.n12Portions14KgThe} />
      </div>
      <p class="buttons">
        <button type="button" disabled={to.trim() === ''} onClick={add}>
          {say.writeItDown}
        </button>
      </p>
    </>
  );
}
