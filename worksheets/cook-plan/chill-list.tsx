import { type ChillKind, type ChillLeg, newChillLeg } from '@larderwright/calc/cook-plan';
import type { Finding } from '@larderwright/calc/findings';
import { rangeIn } from '@larderwright/calc/quantities';
import { Fragment } from 'preact';
import { useState } from 'preact/hooks';
import { ChoiceField } from '../parts/choice-field.tsx';
import { RemovedRowLine, RowTools } from '../parts/row-tools.tsx';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { $life } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { CHILL_KIND_NAMES } from '../words/cook-plan-names.ts';
import { MINUTES, PlanChoice, PlanField, TEMPS } from './plan-field.tsx';

const LIST = 'cookPlan.chill';
const KINDS = Object.entries(CHILL_KIND_NAMES).map(([value, label]) => ({ value, label }));
const COLDS = rangeIn('C', -40, 30);
const STANDING = { apart: 'Apart, air all round', stacked: 'Stacked' };
const TOPS = { open: 'Open', covered: 'Covered' };

/** The stages of the chill, in order. */
export function ChillList({ findings }: { findings: readonly Finding[] }) {
  const legs = useAt(LIST) as readonly ChillLeg[];
  return (
    <ol class="ledger">
      {legs.map((leg, place) => (
        <Fragment key={leg.id}>
          <RemovedRowLine list={LIST} place={place} as="li" />
          <ChillRow leg={leg} place={place} last={place === legs.length - 1} findings={findings} />
        </Fragment>
      ))}
      <RemovedRowLine list={LIST} place={legs.length} as="li" />
    </ol>
  );
}

interface ChillRowProps {
  leg: ChillLeg;
  place: number;
  last: boolean;
  findings: readonly Finding[];
}

function ChillRow({ leg, place, last, findings }: ChillRowProps) {
  const name = `Chill ${place + 1}`;
  const of = `chill.${leg.id}`;
  const wet = leg.kind === 'ice-bath' || leg.kind === 'stirred-ice-bath';
  return (
    <li class="ledger-row chill-row" aria-label={name}>
      <p class="ledger-name">
        <strong>{name}</strong>
      </p>
      <RowTools list={LIST} id={leg.id} label={name} first={place === 0} last={last} />
      <div class="fields ledger-more">
        <PlanChoice of={`${of}.kind`} label={`${name} is`} names={CHILL_KIND_NAMES} />
        <PlanField
          of={`${of}.temp`}
          label={`${name} at`}
          kind="temperature"
          units={TEMPS}
          range={COLDS}
          findings={findings}
        />
        <PlanField
          of={`${of}.minutes`}
          label={`${name} for`}
          kind="time"
          units={MINUTES}
          range={rangeIn('h', 0, 72)}
          hint="Blank: until the core reads"
          findings={findings}
        />
        <PlanField
          of={`${of}.until`}
          label={`${name} until the core reads`}
          kind="temperature"
          units={TEMPS}
          findings={findings}
        />
        {wet ? null : <PlanChoice of={`${of}.standing`} label={`${name}: moulds stand`} names={STANDING} />}
        <PlanChoice of={`${of}.top`} label={`${name}: their tops are`} names={TOPS} />
      </div>
    </li>
  );
}

/** Adds a stage to the chill. */
export function AddChill() {
  const [kind, setKind] = useState<ChillKind>('ice-bath');
  const waking = useShared($life) === 'waking';
  return (
    <div class="add-row">
      <ChoiceField
        label="Another stage of the chill"
        value={kind}
        choices={KINDS}
        onChoose={(value) => setKind(value as ChillKind)}
      />
      <button type="button" disabled={waking} onClick={() => addRow(LIST, newChillLeg(newId(), kind))}>
        Add the stage
      </button>
    </div>
  );
}
