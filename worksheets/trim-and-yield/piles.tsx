import type { Finding } from '@larderwright/calc/findings';
import type { TrimRole, YieldTest } from '@larderwright/calc/yield';
import { type ComponentChildren, Fragment } from 'preact';
import * as say from '#words/trim-and-yield/piles.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RemovedRowLine, RowTools } from '../parts/row-tools.tsx';
import { TextField } from '../parts/text-field.tsx';
import { editAt } from '../state/store.ts';
import { addPart } from './test-edits.ts';

const ROLES: readonly { value: TrimRole; label: string }[] = [
  { value: 'usable', label: say.usableBoughtForThis },
  { value: 'by-product', label: say.byProductWorthSomething },
  { value: 'waste', label: say.waste },
];

interface PilesProps {
  test: YieldTest;
  findings: readonly Finding[];
  money: ComponentChildren;
}

/** The piles a piece is parted into, and what the by-products are worth. */
export function Piles({ test, findings, money }: PilesProps) {
  const path = `yield.tests.${test.id}`;
  const list = `${path}.parts`;
  return (
    <>
      <h4>{say.thePiles}</h4>
      <ul class="ledger">
        {test.parts.map((part, place) => (
          <Fragment key={part.id}>
            <RemovedRowLine list={list} place={place} as="li" />
            <li class="ledger-row ledger-pile" aria-label={part.name || say.pile(place + 1)}>
              <TextField path={`${list}.${part.id}.name`} label={say.pile2} />
              <ChoiceField
                label={say.countsAs}
                value={part.role}
                choices={ROLES}
                onChoose={(role) => editAt(`${list}.${part.id}.role`, role)}
              />
              {part.role === 'by-product' ? (
                <NumberField
                  path={`${list}.${part.id}.value`}
                  label={say.savesElsewhereThe(test.priceBasis)}
                  kind="money"
                  unitSlot={money}
                  hint={say.type0ForNothing}
                  findings={at(findings, `${list}.${part.id}.value`)}
                />
              ) : (
                <span />
              )}
              <RowTools
                list={list}
                id={part.id}
                label={part.name || say.pile(place + 1)}
                first={place === 0}
                last={place === test.parts.length - 1}
              />
            </li>
          </Fragment>
        ))}
        <RemovedRowLine list={list} place={test.parts.length} as="li" />
      </ul>
      <p class="buttons">
        <button type="button" onClick={() => addPart(path, 'usable')}>
          {say.addAPile}
        </button>
      </p>
    </>
  );
}
