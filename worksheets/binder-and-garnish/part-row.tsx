import type { BinderPart, Extender } from '@larderwright/calc/binder';
import type { ComponentChildren } from 'preact';
import * as say from '#words/binder-and-garnish/part-row.ts';
import { NumberField } from '../parts/number-field.tsx';
import { RowTools } from '../parts/row-tools.tsx';
import { IngredientBox } from './ingredient-box.tsx';
import { PackFields } from './pack-fields.tsx';

interface PartRowProps {
  list: string;
  row: BinderPart | Extender;
  place: number;
  last: boolean;
  fallback: string;
  children?: ComponentChildren;
}

/** A part of the panade, or another binder: what it is and what it weighs. */
export function PartRow({ list, row, place, last, fallback, children }: PartRowProps) {
  const path = `${list}.${row.id}`;
  const name = row.name || `${fallback} ${place + 1}`;
  return (
    <li class="ledger-row ledger-pass" aria-label={name}>
      <IngredientBox path={path} row={row} label={`${fallback} ${place + 1}`} />
      <NumberField
        path={`${path}.amount`}
        label={say.weightOf(name)}
        kind="mass"
        units={['g', 'kg', 'oz']}
        compact
      />
      <RowTools list={list} id={row.id} label={name} first={place === 0} last={last} />
      {children ? <div class="ledger-more">{children}</div> : null}
      <details class="pack ledger-more">
        <summary>{say.figuresOffThePack}</summary>
        <div class="fields">
          <PackFields path={path} name={name} />
        </div>
      </details>
    </li>
  );
}
