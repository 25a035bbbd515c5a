import { fixedText } from '@larderwright/calc/quantities';
import type { YieldTest, YieldTestResult } from '@larderwright/calc/yield';
import { Answer } from '../parts/answer.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { Needed } from '../parts/needed.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { moneyText } from '../words/money.ts';
import { yieldFigureNames, yieldWorkings } from '../words/yield.ts';
import type { YieldComputed } from './compute.ts';
import { spreadText } from './spread-text.ts';

interface TestAnswersProps {
  test: YieldTest;
  result: YieldTestResult;
  computed: YieldComputed;
  currency: string;
}

/** An input of a test in the middle of a sentence. */
function fieldName(field: string, test: YieldTest): string {
  const keys = field.split('.');
  const part = test.parts.find(({ id }) => keys.includes(id));
  const trial = test.trials.findIndex(({ id }) => keys.includes(id));
  const pile = part ? part.name || 'an unnamed pile' : null;
  if (field.endsWith('.value')) return `what a ${test.priceBasis} of ${pile ?? 'a by-product'} is worth`;
  if (field.endsWith('.price')) return 'the price as bought';
  if (trial >= 0) return `${pile ?? 'the weight as bought'} in trial ${trial + 1}`;
  return field;
}

const percent = (value: number) => percentText(value, 1);

/** What the trials say together. */
export function TestAnswers({ test, result, computed, currency }: TestAnswersProps) {
  const path = `yield.tests.${test.id}`;
  const { usable, unaccounted, costPerUsableKg, costFactor } = result;
  const money = (value: number) => moneyText(value, currency);
  return (
    <>
      <Needed
        missing={computed.missing.filter(({ field }) => field.startsWith(`${path}.`))}
        figures={yieldFigureNames}
        nameOf={(field) => fieldName(field, test)}
      />
      <div class="answers">
        <Answer
          label="Yield, the mean of the trials"
          value={usable === null ? null : percent(usable.mean)}
          missing="Cannot tell: no trial is weighed out"
          worked={
            <>
              <p>
                {yieldWorkings.usable} {yieldWorkings.mean} {yieldWorkings.sampleSd} Derived; the test itself
                is common practice, no source.
              </p>
              <PileTable test={test} result={result} />
            </>
          }
        >
          {usable === null ? null : <p>{spreadText(usable, percent)}</p>}
        </Answer>
        <Answer
          label="In no pile"
          value={unaccounted === null ? null : percent(unaccounted.mean)}
          missing="Cannot tell: a pile is not weighed"
          worked={<p>{yieldWorkings.unaccounted} Derived: mass balance.</p>}
        >
          {unaccounted === null ? null : <p>{spreadText(unaccounted, percent)}</p>}
        </Answer>
        <Answer
          label="Cost of a usable kilogram"
          value={costPerUsableKg === null ? null : money(costPerUsableKg.mean)}
          missing="Cannot tell: a price, a pile or what a by-product is worth is missing"
          worked={<p>{yieldWorkings.cost} The mean of the trials. Common practice, no source; derived.</p>}
        >
          {costPerUsableKg === null ? null : <p>{spreadText(costPerUsableKg, money)}</p>}
        </Answer>
        <Answer
          label="Cost factor"
          value={costFactor === null ? null : fixedText(costFactor.mean, 3)}
          worked={
            <p>
              {yieldWorkings.costFactor} Multiply a new market price by it, as long as trim and by-products
              stay what they are. Derived.
            </p>
          }
        />
        <Answer
          label="To buy, at the mean yield"
          value={result.purchaseG === null ? null : gramsText(result.purchaseG)}
          missing="Cannot tell: write the trimmed weight wanted"
          worked={
            <p>
              {yieldWorkings.purchase} Never the weight plus the loss, which buys too little. Derived: mass
              balance.
            </p>
          }
        />
        <Answer
          label="To buy, to be safe"
          value={result.purchaseAtLowestG === null ? null : gramsText(result.purchaseAtLowestG)}
          missing="Cannot tell: write the trimmed weight wanted"
          worked={<p>{yieldWorkings.purchase} The lowest yield of the trials is taken. Derived.</p>}
        />
      </div>
      <FindingList findings={at(computed.findings, `${path}.trials`)} />
    </>
  );
}

function PileTable({ test, result }: { test: YieldTest; result: YieldTestResult }) {
  return (
    <FigureTable
      caption="Shares of the purchase"
      columns={['Pile', 'Mean', 'Lowest', 'Highest']}
      rows={test.parts.map((part, index) => {
        const spread = result.parts[index]?.spread ?? null;
        return {
          key: part.id,
          head: part.name || `Pile ${index + 1}`,
          cells: spread ? [spread.mean, spread.min, spread.max].map(percent) : ['–', '–', '–'],
        };
      })}
    />
  );
}
