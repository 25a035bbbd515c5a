import { type ChillKind, type ChillLeg, newChillLeg } from '@larderwright/calc/cook-plan';
import type { Finding } from '@larderwright/calc/findings';
import { rangeIn } from '@larderwright/calc/quantities';
import { Fragment } from 'preact';
import { useState } from 'preact/hooks';
import * as say from '#words/cook-plan/chill-list.ts';
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
const STANDING = { apart: say.apartAirAllRound, stacked: say.stacked };
const TOPS = { open: say.open, covered: say.covered };

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
  const name = say.chill(place + 1);
  const of = `chill.${leg.id}`;
  const wet = leg.kind === 'ice-bath' || leg.kind === 'stirred-ice-bath';
  return (
    <li class="ledger-row chill-row" aria-label={name}>
      <p class="ledger-name">
        <strong>{name}</strong>
      </p>
      <RowTools list={LIST} id={leg.id} label={name} first={place === 0} last={last} />
      <div class="fields ledger-more">
        <PlanChoice of={`${of}.kind`} label={say.is(name)} names={CHILL_KIND_NAMES} />
        <PlanField
          of={`${of}.temp`}
          label={say.at(name)}
          kind="temperature"
          units={TEMPS}
          range={COLDS}
          findings={findings}
        />
        <PlanField
          of={`${of}.minutes`}
          label={say.forWord(name)}
          kind="time"
          units={MINUTES}
          range={rangeIn('h', 0, 72)}
          hint={say.blankUntilTheCoreReads}
          findings={findings}
        />
        <PlanField
          of={`${of}.until`}
          label={say.untilTheCoreReads(name)}
          kind="temperature"
          units={TEMPS}
          findings={findings}
        />
        {wet ? null : <PlanChoice of={`${of}.standing`} label={say.mouldsStand(name)} names={STANDING} />}
        <PlanChoice of={`${of}.top`} label={say.theirTopsAre(name)} names={TOPS} />
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
        label={say.anotherStageOfTheChill}
        value={kind}
        choices={KINDS}
        onChoose={(value) => setKind(value as ChillKind)}
      />
      <button type="button" disabled={waking} onClick={() => addRow(LIST, newChillLeg(newId(), kind))}>
        {say.addTheStage}
      </button>
    </div>
  );
}
