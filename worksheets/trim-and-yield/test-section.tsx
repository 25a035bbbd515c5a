import type { Unit } from '@larderwright/calc/quantities';
import type { YieldTest } from '@larderwright/calc/yield';
import { useEffect, useRef } from 'preact/hooks';
import * as say from '#words/trim-and-yield/test-section.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at } from '../parts/finding-list.tsx';
import { NotYet } from '../parts/not-yet.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RowTools } from '../parts/row-tools.tsx';
import { TextField } from '../parts/text-field.tsx';
import { $batch, editAt } from '../state/store.ts';
import type { YieldComputed } from './compute.ts';
import { CopyYield } from './copy-yield.tsx';
import { Piles } from './piles.tsx';
import { TestAnswers } from './test-answers.tsx';
import { $newestTest } from './test-edits.ts';
import { Trials } from './trials.tsx';

const MASSES: readonly Unit[] = ['kg', 'g', 'lb'];
const BASES = [
  { value: 'kg', label: say.theKg },
  { value: 'lb', label: say.theLb },
];

interface TestSectionProps {
  test: YieldTest;
  place: number;
  last: boolean;
  computed: YieldComputed | null;
}

/** One cut from one kind of supply: its piles, its trials, what they say. */
export function TestSection({ test, place, last, computed }: TestSectionProps) {
  const path = `yield.tests.${test.id}`;
  const name = test.name || say.test(place + 1);
  const findings = computed?.findings ?? [];
  const result = computed?.values.tests.find(({ testId }) => testId === test.id) ?? null;
  const currency = $batch.get().plan?.currency ?? '';
  const section = useRef<HTMLElement>(null);
  useEffect(() => {
    if ($newestTest.get() !== test.id) return;
    $newestTest.set(null);
    section.current?.querySelector<HTMLElement>('.fields input')?.focus();
  }, [test.id]);
  const money = <span class="field-unit">{currency || say.money}</span>;
  return (
    <section ref={section} class="trim-test" aria-label={name}>
      <div class="test-head">
        <h3>{name}</h3>
        <RowTools list="yield.tests" id={test.id} label={name} first={place === 0} last={last} />
      </div>
      <div class="fields fields-first-wide">
        <TextField path={`${path}.name`} label={say.speciesCutSupplier} />
        <NumberField
          path={`${path}.price`}
          label={say.priceAsBought}
          kind="money"
          unitSlot={money}
          findings={at(findings, `${path}.price`)}
        />
        <ChoiceField
          label={say.priceFor}
          value={test.priceBasis}
          choices={BASES}
          onChoose={(basis) => editAt(`${path}.priceBasis`, basis)}
        />
      </div>
      <Piles test={test} findings={findings} money={money} />
      <Trials test={test} findings={findings} />
      <h4>{say.whatItYields}</h4>
      <div class="fields">
        <NumberField
          path={`${path}.needed`}
          label={say.trimmedWeightWanted}
          kind="mass"
          units={MASSES}
          findings={at(findings, `${path}.needed`)}
        />
        <NumberField
          path={`${path}.usualLow`}
          label={say.usualYieldHereFrom}
          kind="fraction"
          hint={say.ownEarlierTestsBlankNobodyHas}
          findings={at(findings, `${path}.usualLow`)}
        />
        <NumberField path={`${path}.usualHigh`} label={say.usualYieldHereTo} kind="fraction" />
      </div>
      {result && computed ? (
        <>
          <TestAnswers test={test} result={result} computed={computed} currency={currency} />
          <CopyYield usable={result.usable?.mean ?? null} name={name} />
        </>
      ) : (
        <NotYet />
      )}
    </section>
  );
}
