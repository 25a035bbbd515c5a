import { type ChillLot, type GrindPass, type LotKind, newChillLot } from '@larderwright/calc/chill-budget';
import type { Finding } from '@larderwright/calc/findings';
import { rangeIn } from '@larderwright/calc/quantities';
import { Fragment } from 'preact';
import { useState } from 'preact/hooks';
import * as say from '#words/chill-budget/lots.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RemovedRowLine, RowTools } from '../parts/row-tools.tsx';
import { TextField } from '../parts/text-field.tsx';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { $life, editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { LOT_KIND_NAMES } from '../words/chill-budget-names.ts';
import { lotName, passName } from './names.ts';

const LIST = 'chillBudget.lots';
const KINDS = Object.entries(LOT_KIND_NAMES).map(([value, label]) => ({ value, label }));
/** What the handbook's method is good for. */
const TEMPS = rangeIn('C', -38, 60);

/** Everything that goes into the mix. */
export function LotList({ findings }: { findings: readonly Finding[] }) {
  const lots = useAt(LIST) as readonly ChillLot[];
  const passes = useAt('chillBudget.passes') as readonly GrindPass[];
  return (
    <ol class="ledger">
      {lots.map((lot, place) => (
        <Fragment key={lot.id}>
          <RemovedRowLine list={LIST} place={place} as="li" />
          <LotRow
            lot={lot}
            place={place}
            last={place === lots.length - 1}
            passes={passes}
            findings={findings}
          />
        </Fragment>
      ))}
      <RemovedRowLine list={LIST} place={lots.length} as="li" />
    </ol>
  );
}

interface LotRowProps {
  lot: ChillLot;
  place: number;
  last: boolean;
  passes: readonly GrindPass[];
  findings: readonly Finding[];
}

function LotRow({ lot, place, last, passes, findings }: LotRowProps) {
  const path = `${LIST}.${lot.id}`;
  const name = lotName(lot);
  return (
    <li class="ledger-row ledger-lot" aria-label={name}>
      <ChoiceField
        label={say.whatIs(name)}
        value={lot.kind}
        choices={KINDS}
        onChoose={(kind) => editAt(`${path}.kind`, kind)}
        compact
      />
      <NumberField
        path={`${path}.mass`}
        label={say.weightOf(name)}
        kind="mass"
        units={['kg', 'g', 'lb']}
        findings={at(findings, `${path}.mass`)}
        compact
      />
      <NumberField
        path={`${path}.temp`}
        label={say.temperatureOf(name)}
        kind="temperature"
        units={['C', 'F']}
        range={TEMPS}
        findings={at(findings, `${path}.temp`)}
        compact
      />
      <RowTools list={LIST} id={lot.id} label={name} first={place === 0} last={last} />
      {lot.kind === 'mixed' ? (
        <div class="ledger-more">
          <NumberField
            path={`${path}.fat`}
            label={say.fatOf(name)}
            kind="fraction"
            findings={at(findings, `${path}.fat`)}
          />
        </div>
      ) : null}
      <details class="pack ledger-more">
        <summary>{say.itsNameAndWhenItGoes}</summary>
        <div class="fields">
          <TextField path={`${path}.name`} label={say.ownNameFor(name)} />
          <ChoiceField
            label={say.goesIn(name)}
            value={lot.beforePassId ?? ''}
            empty={say.fromTheStart}
            choices={passes.map((pass, index) => ({
              value: pass.id,
              label: say.before(passName(pass, index).toLowerCase()),
            }))}
            onChoose={(passId) => editAt(`${path}.beforePassId`, passId || null)}
          />
        </div>
      </details>
    </li>
  );
}

/** Adds a lot of a kind. */
export function AddLot() {
  const [kind, setKind] = useState<LotKind>('ice');
  const waking = useShared($life) === 'waking';
  return (
    <div class="add-row">
      <ChoiceField
        label={say.somethingElseGoesIn}
        value={kind}
        choices={KINDS}
        onChoose={(value) => setKind(value as LotKind)}
      />
      <button type="button" disabled={waking} onClick={() => addRow(LIST, newChillLot(newId(), kind))}>
        {say.addIt}
      </button>
    </div>
  );
}
