import { fixedText } from '@larderwright/calc/quantities';
import type { YieldTest, YieldTestResult } from '@larderwright/calc/yield';
import * as say from '#words/trim-and-yield/test-answers.ts';
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
  const pile = part ? part.name || say.anUnnamedPile : null;
  if (field.endsWith('.value')) return say.whatAOfIsWorth(test.priceBasis, pile ?? say.aByProduct);
  if (field.endsWith('.price')) return say.thePriceAsBought;
  if (trial >= 0) return say.inTrial(pile ?? say.theWeightAsBought, trial + 1);
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
          label={say.yieldTheMeanOfTheTrials}
          value={usable === null ? null : percent(usable.mean)}
          missing={say.cannotTellNoTrialIsWeighed}
          worked={
            <>
              <p>
                {say.derivedTestItselfCommon(
                  yieldWorkings.usable,
                  yieldWorkings.mean,
                  yieldWorkings.sampleSd,
                )}
              </p>
              <PileTable test={test} result={result} />
            </>
          }
        >
          {usable === null ? null : <p>{spreadText(usable, percent)}</p>}
        </Answer>
        <Answer
          label={say.inNoPile}
          value={unaccounted === null ? null : percent(unaccounted.mean)}
          missing={say.cannotTellAPileIsNot}
          worked={<p>{say.derivedMassBalance(yieldWorkings.unaccounted)}</p>}
        >
          {unaccounted === null ? null : <p>{spreadText(unaccounted, percent)}</p>}
        </Answer>
        <Answer
          label={say.costOfAUsableKilogram}
          value={costPerUsableKg === null ? null : money(costPerUsableKg.mean)}
          missing={say.cannotTellPricePileWhatProduct}
          worked={<p>{say.meanTrialsCommonPracticeNo(yieldWorkings.cost)}</p>}
        >
          {costPerUsableKg === null ? null : <p>{spreadText(costPerUsableKg, money)}</p>}
        </Answer>
        <Answer
          label={say.costFactor}
          value={costFactor === null ? null : fixedText(costFactor.mean, 3)}
          worked={<p>{say.multiplyNewMarketPriceLongTrim(yieldWorkings.costFactor)}</p>}
        />
        <Answer
          label={say.toBuyAtTheMeanYield}
          value={result.purchaseG === null ? null : gramsText(result.purchaseG)}
          missing={say.cannotTellWriteTrimmedWeight}
          worked={<p>{say.neverWeightPlusLossBuysToo(yieldWorkings.purchase)}</p>}
        />
        <Answer
          label={say.toBuyToBeSafe}
          value={result.purchaseAtLowestG === null ? null : gramsText(result.purchaseAtLowestG)}
          missing={say.cannotTellWriteTrimmedWeight}
          worked={<p>{say.lowestYieldTrialsTakenDerived(yieldWorkings.purchase)}</p>}
        />
      </div>
      <FindingList findings={at(computed.findings, `${path}.trials`)} />
    </>
  );
}

function PileTable({ test, result }: { test: YieldTest; result: YieldTestResult }) {
  return (
    <FigureTable
      caption={say.sharesOfThePurchase}
      columns={[say.pile, say.mean, say.lowest, say.highest]}
      rows={test.parts.map((part, index) => {
        const spread = result.parts[index]?.spread ?? null;
        return {
          key: part.id,
          head: part.name || say.pile2(index + 1),
          cells: spread ? [spread.mean, spread.min, spread.max].map(percent) : ['–', '–', '–'],
        };
      })}
    />
  );
}
