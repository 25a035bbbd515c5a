import { useEffect, useRef } from 'preact/hooks';
import * as say from '#words/parts/row-tools.ts';
import { $removed, moveRow, putBack, removeRow } from '../state/rows.ts';
import { $batch } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';

interface RowToolsProps {
  /** Path of the list. */
  list: string;
  id: string;
  /** What the row is called in the buttons' names. */
  label: string;
  first: boolean;
  last: boolean;
}

/** Move a row up or down, or take it out. Focus stays on the button, wherever the row goes. */
export function RowTools({ list, id, label, first, last }: RowToolsProps) {
  const up = useRef<HTMLButtonElement>(null);
  const down = useRef<HTMLButtonElement>(null);
  const pressed = useRef<1 | -1 | null>(null);
  // Moving the row in the page can drop the focus; at the end of the list the button itself goes grey.
  useEffect(() => {
    if (pressed.current === null) return;
    const wanted = pressed.current === -1 ? (first ? down : up) : last ? up : down;
    pressed.current = null;
    wanted.current?.focus();
  });
  const move = (by: 1 | -1) => {
    pressed.current = by;
    moveRow(list, id, by);
  };
  return (
    <div class="row-tools">
      <button ref={up} type="button" disabled={first} aria-label={say.moveUp(label)} onClick={() => move(-1)}>
        <span aria-hidden="true">↑</span>
      </button>
      <button
        ref={down}
        type="button"
        disabled={last}
        aria-label={say.moveDown(label)}
        onClick={() => move(1)}
      >
        <span aria-hidden="true">↓</span>
      </button>
      <button type="button" aria-label={say.remove(label)} onClick={() => removeRow(list, id, label)}>
        <span aria-hidden="true">✕</span>
      </button>
    </div>
  );
}

interface RemovedRowLineProps {
  list: string;
  /** Row before which this line stands, the length of the list for the end. Left out: it stands for all. */
  place?: number;
  /** Inside an ordered list it is an item. */
  as?: 'li' | 'div';
}

/** Stands where a row was taken out, says which, and puts it back. */
export function RemovedRowLine({ list, place, as: Box = 'div' }: RemovedRowLineProps) {
  const removed = useShared($removed);
  const batchId = useShared($batch).id;
  const rows = useAt(list) as readonly { id: string }[];
  const button = useRef<HTMLButtonElement>(null);
  const here =
    removed?.list === list &&
    removed.batchId === batchId &&
    (place === undefined || Math.min(removed.index, rows.length) === place) &&
    !rows.some(({ id }) => id === removed.row.id)
      ? removed
      : null;
  // The pressed button went with its row: without this the keyboard would start again at the top of the page.
  useEffect(() => {
    if (here) button.current?.focus();
  }, [here]);
  return here ? (
    <Box class="removed-row">
      <span>
        {say.takenOut} <strong>{here.label}</strong>
      </span>
      <button ref={button} type="button" aria-label={say.putItBack(here.label)} onClick={putBack}>
        {say.putItBack2}
      </button>
    </Box>
  ) : null;
}
