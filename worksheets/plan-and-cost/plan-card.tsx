import { TERRINE_STEPS } from '@larderwright/calc/plan';
import { useState } from 'preact/hooks';
import * as say from '#words/plan-and-cost/plan-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { Block, Cell, RowHead, WriteIn } from '../batch-sheet/write-in.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import { PLAN_STEP_NAMES } from '../words/plan-names.ts';
import type { BuyRow, PlanCardModel, StepRow } from './card-model.ts';
import type { PlanComputed } from './compute.ts';

const NOTHING = { name: '', bowl: null, trimYield: null, buy: null, price: null, cost: null } as const;
/** As many as leave the empty card on one page. */
const BLANK_ROWS: readonly BuyRow[] = Array.from({ length: 8 }, (_, row) => ({ id: `${row}`, ...NOTHING }));
const BLANK_STEPS: readonly StepRow[] = TERRINE_STEPS.map((kind) => ({
  id: kind,
  name: PLAN_STEP_NAMES[kind],
  least: null,
  most: null,
  notBefore: null,
  beginBy: null,
}));

interface PlanCardProps {
  computed: PlanComputed | null;
  paper: Paper;
  standing: string;
}

/** The plan on paper: what to buy, what it costs, when to begin, each with a box to tick. */
export function PlanCard({ computed, paper, standing }: PlanCardProps) {
  const [costs, showCosts] = useState(true);
  const model = computed?.card ?? null;
  return (
    <>
      <label class="no-print card-choice">
        <input type="checkbox" checked={costs} onChange={() => showCosts(!costs)} />
        {say.costsPricesCardLeaveOffBench}
      </label>
      <PrintCard
        title={say.planAndCost}
        head={computed?.head ?? BLANK_HEAD}
        paper={paper}
        stops={[]}
        standing={standing}
        noRules={say.ruleSetNoneNothingHereJudged}
      >
        <Masses
          model={model}
          product={computed?.head.product ?? null}
          kitchen={computed?.head.kitchen ?? null}
        />
        <ShoppingTable
          rows={model ? model.rows : BLANK_ROWS}
          costs={costs}
          total={model?.columnTotal ?? null}
        />
        {costs ? <CostBlock model={model} /> : null}
        <Timeline
          steps={model && model.steps.length > 0 ? model.steps : BLANK_STEPS}
          servingAt={model?.servingAt ?? null}
        />
        <Loads model={model} />
      </PrintCard>
    </>
  );
}

function Masses(props: { model: PlanCardModel | null; product: string | null; kitchen: string | null }) {
  const { model, product, kitchen } = props;
  const inputs = model?.inputs;
  const results = model?.results;
  return (
    <Block no={1} title={say.masses}>
      <div class="write-row">
        <WriteIn label={say.product} value={product} wide />
        <WriteIn label={say.kitchen} value={kitchen} />
        <WriteIn label={say.worked} value={model?.want ?? null} wide />
      </div>
      <div class="write-row">
        <WriteIn label={say.portionsWanted} value={inputs?.portions} />
        <WriteIn label={say.portion} value={inputs?.portion} unit="g" />
        <WriteIn label={say.finishedWanted} value={inputs?.finished} unit="kg" />
        <WriteIn label={say.cookLoss} value={inputs?.cookLoss} unit="% of fill" />
        <WriteIn label={say.ends} value={inputs?.endLoss} unit="% of finished" />
        <WriteIn label={say.residue} value={inputs?.residue} unit="% of mix" />
        <WriteIn label={say.testPoach} value={inputs?.testPoach} unit="g" />
      </div>
      <div class="write-row">
        <WriteIn label={say.finished} value={results?.finished} unit="g" />
        <WriteIn label={say.fill} value={results?.fill} unit="g" />
        <WriteIn label={say.mixToMake} value={results?.mix} unit="g" />
        <WriteIn label={say.timesFormula} value={results?.factor} />
        <WriteIn label={say.wholePortions} value={results?.portions} />
        <WriteIn label={say.moulds} value={results?.moulds} />
      </div>
    </Block>
  );
}

function ShoppingTable(props: {
  rows: readonly BuyRow[];
  costs: boolean;
  total: PlanCardModel['results']['food'];
}) {
  const { rows, costs, total } = props;
  return (
    <Block no={2} title={say.toBuy} stacked>
      <table class="sheet-table">
        <colgroup>
          <col class="col-tick" />
          <col />
          <col class="col-write" />
          <col class="col-write" />
          <col class="col-lot" />
          {costs ? <col class="col-lot" /> : null}
          {costs ? <col class="col-write" /> : null}
          {costs ? null : <col class="col-write" />}
        </colgroup>
        <thead>
          <tr>
            <th scope="col">{say.got}</th>
            <th scope="col">{say.line}</th>
            <th scope="col">{say.bowlG}</th>
            <th scope="col">{say.yieldWord}</th>
            <th scope="col">{say.toBuy}</th>
            {costs ? <th scope="col">{say.price}</th> : null}
            {costs ? <th scope="col">{say.cost}</th> : <th scope="col">{say.boughtG}</th>}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id}>
              <td />
              <RowHead name={row.name} />
              <td class="figure">
                <Cell value={row.bowl} />
              </td>
              <td class="figure">
                <Cell value={row.trimYield} />
              </td>
              <td>
                <Cell value={row.buy} />
              </td>
              {costs ? (
                <td>
                  <Cell value={row.price} />
                </td>
              ) : null}
              <td class="figure">{costs ? <Cell value={row.cost} /> : null}</td>
            </tr>
          ))}
        </tbody>
        {costs ? (
          <tfoot>
            <tr>
              <th scope="row" colSpan={6}>
                {say.foodSmallThingsIncludedSum}
              </th>
              <td class="figure">
                <Cell value={total} />
              </td>
            </tr>
          </tfoot>
        ) : null}
      </table>
    </Block>
  );
}

function CostBlock({ model }: { model: PlanCardModel | null }) {
  const inputs = model?.inputs;
  const results = model?.results;
  return (
    <Block no={3} title={say.costPrice}>
      <div class="write-row">
        <WriteIn label={say.smallThings} value={inputs?.sundries} />
        <WriteIn label={say.handsOnTime} value={inputs?.labour} unit="min" />
        <WriteIn label={say.labourAnHour} value={inputs?.labourRate} />
        <WriteIn label={say.overhead} value={inputs?.overhead} />
        <WriteIn label={say.allCostsBatch} value={results?.full} />
      </div>
      <div class="write-row">
        <WriteIn label={say.foodAPortion} value={results?.foodPerPortion} />
        <WriteIn label={say.allCostsAPortion} value={results?.fullPerPortion} />
        <WriteIn label={model?.shareName ?? say.grossProfitOfPrice} value={inputs?.share} unit="%" />
        <WriteIn label={say.tax} value={inputs?.tax} unit="%" />
        <WriteIn label={say.portionBeforeTax} value={results?.exTax} />
        <WriteIn label={say.portionWithTax} value={results?.incTax} />
      </div>
    </Block>
  );
}

function Timeline({ steps, servingAt }: { steps: readonly StepRow[]; servingAt: string | null }) {
  return (
    <Block no={4} title={say.when(servingAt === null ? '' : say.served(servingAt))} stacked>
      <table class="sheet-table">
        <colgroup>
          <col class="col-tick" />
          <col />
          <col class="col-write" />
          <col class="col-write" />
          <col class="col-lot" />
          <col class="col-lot" />
          <col class="col-write" />
        </colgroup>
        <thead>
          <tr>
            <th scope="col">{say.done}</th>
            <th scope="col">{say.step}</th>
            <th scope="col">{say.atLeast}</th>
            <th scope="col">{say.atMost}</th>
            <th scope="col">{say.notBefore}</th>
            <th scope="col">{say.beginBy}</th>
            <th scope="col">{say.begunInitials}</th>
          </tr>
        </thead>
        <tbody>
          {steps.map((step) => (
            <tr key={step.id}>
              <td />
              <RowHead name={step.name} />
              <td>
                <Cell value={step.least} />
              </td>
              <td>
                <Cell value={step.most} />
              </td>
              <td>{step.notBefore}</td>
              <td>{step.beginBy}</td>
              <td />
            </tr>
          ))}
        </tbody>
      </table>
    </Block>
  );
}

function Loads({ model }: { model: PlanCardModel | null }) {
  return (
    <Block no={5} title={say.loads}>
      <div class="write-row">
        <WriteIn label={say.chillerTakes} value={model?.inputs.chiller} unit="kg" />
        <WriteIn label={say.chillerRuns} value={model?.results.chillerRuns} />
        <WriteIn label={say.bathTakesMoulds} value={model?.inputs.bath} />
        <WriteIn label={say.bathRuns} value={model?.results.bathRuns} />
        <WriteIn label={say.plannedBy} />
      </div>
    </Block>
  );
}
