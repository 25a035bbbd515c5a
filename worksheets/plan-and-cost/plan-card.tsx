import { TERRINE_STEPS } from '@larderwright/calc/plan';
import { useState } from 'preact/hooks';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { Block, Cell, RowHead, WriteIn } from '../batch-sheet/write-in.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import { PLAN_STEP_NAMES } from '../words/plan-names.ts';
import type { BuyRow, PlanCardModel, StepRow } from './card-model.ts';
import type { PlanComputed } from './compute.ts';

const NOTHING = { name: '', bowl: null, trimYield: null, buy: null, price: null, cost: null } as const;
const BLANK_ROWS: readonly BuyRow[] = Array.from({ length: 14 }, (_, row) => ({ id: `${row}`, ...NOTHING }));
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
        Costs and prices on the card. Leave them off for the bench.
      </label>
      <PrintCard
        title="Plan and cost"
        head={computed?.head ?? BLANK_HEAD}
        paper={paper}
        stops={[]}
        standing={standing}
        noRules="Rule set: none, nothing here is judged by one"
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
    <Block no={1} title="Masses">
      <div class="write-row">
        <WriteIn label="Product" value={product} wide />
        <WriteIn label="Kitchen" value={kitchen} />
        <WriteIn label="Worked" value={model?.want ?? null} wide />
      </div>
      <div class="write-row">
        <WriteIn label="Portions wanted" value={inputs?.portions} />
        <WriteIn label="Portion" value={inputs?.portion} unit="g" />
        <WriteIn label="Finished wanted" value={inputs?.finished} unit="kg" />
        <WriteIn label="Cook loss" value={inputs?.cookLoss} unit="% of fill" />
        <WriteIn label="Ends" value={inputs?.endLoss} unit="% of finished" />
        <WriteIn label="Residue" value={inputs?.residue} unit="% of mix" />
        <WriteIn label="Test poach" value={inputs?.testPoach} unit="g" />
      </div>
      <div class="write-row">
        <WriteIn label="Finished" value={results?.finished} unit="g" />
        <WriteIn label="Fill" value={results?.fill} unit="g" />
        <WriteIn label="Mix to make" value={results?.mix} unit="g" />
        <WriteIn label="Times formula" value={results?.factor} />
        <WriteIn label="Whole portions" value={results?.portions} />
        <WriteIn label="Moulds" value={results?.moulds} />
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
    <Block no={2} title="To buy" stacked>
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
            <th scope="col">Got</th>
            <th scope="col">Line</th>
            <th scope="col">Bowl g</th>
            <th scope="col">Yield</th>
            <th scope="col">To buy</th>
            {costs ? <th scope="col">Price</th> : null}
            {costs ? <th scope="col">Cost</th> : <th scope="col">Bought g</th>}
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
                Food, small things included: the sum of this column and of them
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
    <Block no={3} title="Cost, price">
      <div class="write-row">
        <WriteIn label="Small things" value={inputs?.sundries} />
        <WriteIn label="Hands-on time" value={inputs?.labour} unit="min" />
        <WriteIn label="Labour, an hour" value={inputs?.labourRate} />
        <WriteIn label="Overhead" value={inputs?.overhead} />
        <WriteIn label="All costs, batch" value={results?.full} />
      </div>
      <div class="write-row">
        <WriteIn label="Food, a portion" value={results?.foodPerPortion} />
        <WriteIn label="All costs, a portion" value={results?.fullPerPortion} />
        <WriteIn label={model?.shareName ?? 'Gross profit, of price'} value={inputs?.share} unit="%" />
        <WriteIn label="Tax" value={inputs?.tax} unit="%" />
        <WriteIn label="Portion before tax" value={results?.exTax} />
        <WriteIn label="Portion with tax" value={results?.incTax} />
      </div>
    </Block>
  );
}

function Timeline({ steps, servingAt }: { steps: readonly StepRow[]; servingAt: string | null }) {
  return (
    <Block no={4} title={`When${servingAt === null ? '' : `: served ${servingAt}`}`} stacked>
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
            <th scope="col">Done</th>
            <th scope="col">Step</th>
            <th scope="col">At least</th>
            <th scope="col">At most</th>
            <th scope="col">Not before</th>
            <th scope="col">Begin by</th>
            <th scope="col">Begun, initials</th>
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
    <Block no={5} title="Loads">
      <div class="write-row">
        <WriteIn label="Chiller takes" value={model?.inputs.chiller} unit="kg" />
        <WriteIn label="Chiller runs" value={model?.results.chillerRuns} />
        <WriteIn label="Bath takes, moulds" value={model?.inputs.bath} />
        <WriteIn label="Bath runs" value={model?.results.bathRuns} />
        <WriteIn label="Planned by" />
      </div>
    </Block>
  );
}
