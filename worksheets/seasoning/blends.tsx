import { newBlendItem, type SeasoningBlend } from '@larderwright/calc/seasoning';
import { Fragment } from 'preact';
import * as say from '#words/seasoning/blends.ts';
import { Answer } from '../parts/answer.tsx';
import { DateField } from '../parts/date-field.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { gramsText } from '../parts/number-text.ts';
import { RemovedRowLine, RowTools } from '../parts/row-tools.tsx';
import { TextField } from '../parts/text-field.tsx';
import { newId } from '../state/clock.ts';
import { addRow } from '../state/rows.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { seasoningWorkings } from '../words/seasoning.ts';
import { BeginStyle } from './begin-style.tsx';
import type { SeasoningComputed } from './compute.ts';
import { $seasoning } from './computed.ts';
import { SpiceRow } from './spice-row.tsx';

const LIST = 'seasoning.blends';
/** No blend is dosed heavier than the mix. */
const DOSE = { min: 0, max: 0.2 };

/** Every blend of the batch. */
export function Blends() {
  const blends = useAt(LIST) as readonly SeasoningBlend[];
  const computed = useShared($seasoning);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <>
      {blends.map((blend, place) => (
        <Fragment key={blend.id}>
          <RemovedRowLine list={LIST} place={place} />
          <BlendSection blend={blend} place={place} last={place === blends.length - 1} computed={ready} />
        </Fragment>
      ))}
      <RemovedRowLine list={LIST} place={blends.length} />
    </>
  );
}

interface BlendSectionProps {
  blend: SeasoningBlend;
  place: number;
  last: boolean;
  computed: SeasoningComputed | null;
}

function BlendSection({ blend, place, last, computed }: BlendSectionProps) {
  const path = `${LIST}.${blend.id}`;
  const name = blend.name || say.blend(place + 1);
  const findings = computed?.findings ?? [];
  const weights = computed?.values.blends.find(({ blendId }) => blendId === blend.id) ?? null;
  return (
    <section class="mould" aria-label={name}>
      <div class="mould-head">
        <h3>{name}</h3>
        <RowTools list={LIST} id={blend.id} label={name} first={place === 0} last={last} />
      </div>
      <div class="fields">
        <TextField path={`${path}.name`} label={say.nameOfTheBlend} />
        <NumberField
          path={`${path}.dose`}
          label={say.doseOfTheBlendOnThe}
          kind="fraction"
          units={['g/kg', '%']}
          range={DOSE}
          findings={at(findings, `${path}.dose`)}
        />
        <NumberField
          path={`${path}.stockTimes`}
          label={say.mixForSoManyBatches}
          kind="ratio"
          range={{ min: 0, max: 10_000 }}
          unitSlot={<span class="field-unit">{say.batches}</span>}
          hint={say.largerStockWeighedMoreTrulyOne}
          findings={at(findings, `${path}.stockTimes`)}
        />
        <DateField
          path={`${path}.groundOn`}
          label={say.groundOn}
          findings={at(findings, `${path}.groundOn`)}
        />
      </div>
      {blend.items.length === 0 ? <BeginStyle blend={blend} /> : null}
      <ol class="ledger">
        {blend.items.map((item, at) => (
          <Fragment key={item.id}>
            <RemovedRowLine list={`${path}.items`} place={at} as="li" />
            <SpiceRow
              list={`${path}.items`}
              row={item}
              place={at}
              last={at === blend.items.length - 1}
              weight={weights?.items.find(({ id }) => id === item.id) ?? null}
              computed={computed}
            />
          </Fragment>
        ))}
        <RemovedRowLine list={`${path}.items`} place={blend.items.length} as="li" />
      </ol>
      <p class="buttons">
        <button type="button" onClick={() => addRow(`${path}.items`, newBlendItem(newId()))}>
          {say.addASpiceTo(name)}
        </button>
      </p>
      <FindingList findings={at(findings, path)} />
      <div class="answers">
        <Answer
          label={say.ofThisBlendIntoTheBatch}
          value={
            weights && weights.items.length > 0 && weights.massG !== null ? gramsText(weights.massG) : null
          }
          missing={say.cannotTellPartsDoseTotalMix}
          worked={<p>{say.derived(seasoningWorkings.massG)}</p>}
        />
        {weights?.stockG != null && weights.stockTimes !== 1 && weights.items.length > 0 ? (
          <Answer
            label={say.stockToMix}
            value={gramsText(weights.stockG)}
            worked={<p>{say.whatBatchTakesTimesBatchesMix}</p>}
          />
        ) : null}
        {weights?.stockTimesNeeded != null && weights.stockTimesNeeded > (weights.stockTimes ?? 0) ? (
          <Answer
            label={say.batchesMixScaleShowsEverySpice}
            value={String(weights.stockTimesNeeded)}
            worked={<p>{say.derivedFiveStepsCommonPractice(seasoningWorkings.stockTimesNeeded)}</p>}
          />
        ) : null}
      </div>
    </section>
  );
}
