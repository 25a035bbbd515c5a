import { type GrindPass, newGrindPass, type PassKind } from '@larderwright/calc/chill-budget';
import type { Finding } from '@larderwright/calc/findings';
import { rangeIn } from '@larderwright/calc/quantities';
import { Fragment } from 'preact';
import { useState } from 'preact/hooks';
import * as say from '#words/chill-budget/passes.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RemovedRowLine, RowTools } from '../parts/row-tools.tsx';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { $life } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { PASS_KIND_NAMES } from '../words/chill-budget-names.ts';
import { passName } from './names.ts';

const LIST = 'chillBudget.passes';
const KINDS = Object.entries(PASS_KIND_NAMES).map(([value, label]) => ({ value, label }));
const RISES = rangeIn('dC', 0, 40);

/** Every run through grinder, chopper and mixer, in order. */
export function PassList({ findings }: { findings: readonly Finding[] }) {
  const passes = useAt(LIST) as readonly GrindPass[];
  return (
    <>
      <ol class="ledger">
        {passes.map((pass, place) => {
          const name = passName(pass, place);
          const path = `${LIST}.${pass.id}.rise`;
          return (
            <Fragment key={pass.id}>
              <RemovedRowLine list={LIST} place={place} as="li" />
              <li class="ledger-row ledger-pass" aria-label={name}>
                <p class="ledger-name">
                  <strong>{name}</strong>
                </p>
                <NumberField
                  path={path}
                  label={say.warmsItBy(name)}
                  kind="temperature-difference"
                  units={['dC', 'dF']}
                  range={RISES}
                  findings={at(findings, path)}
                  compact
                />
                <RowTools
                  list={LIST}
                  id={pass.id}
                  label={name}
                  first={place === 0}
                  last={place === passes.length - 1}
                />
              </li>
            </Fragment>
          );
        })}
        <RemovedRowLine list={LIST} place={passes.length} as="li" />
      </ol>
      <p class="say">{say.whatPassWarmsMeatNotFrozen}</p>
    </>
  );
}

/** Adds a pass of a kind, with its usual warming. */
export function AddPass() {
  const [kind, setKind] = useState<PassKind>('chop');
  const waking = useShared($life) === 'waking';
  return (
    <div class="add-row">
      <ChoiceField
        label={say.anotherPass}
        value={kind}
        choices={KINDS}
        onChoose={(value) => setKind(value as PassKind)}
      />
      <button type="button" disabled={waking} onClick={() => addRow(LIST, newGrindPass(newId(), kind))}>
        {say.addThePass}
      </button>
    </div>
  );
}
