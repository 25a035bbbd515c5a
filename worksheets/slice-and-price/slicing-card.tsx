import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { Block, Cell, WriteIn } from '../batch-sheet/write-in.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import type { PriceRow } from './card-model.ts';
import type { SlicingComputed } from './compute.ts';

const BLANK_PRICES: readonly PriceRow[] = ['A portion', 'A slice', 'A kilogram', 'A pound'].map((label) => ({
  id: label,
  label,
  exTax: null,
  incTax: null,
}));

interface SlicingCardProps {
  computed: SlicingComputed | null;
  paper: Paper;
  standing: string;
}

/** The cut on paper: how thick, how many, what each costs, and a tally of what was really cut. */
export function SlicingCard({ computed, paper, standing }: SlicingCardProps) {
  const card = computed?.card ?? null;
  const inputs = card?.inputs;
  const results = card?.results;
  return (
    <PrintCard
      title="Slice, portion, price"
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={[]}
      standing={standing}
      noRules="Rule set: none, nothing here is judged by one"
    >
      <Block no={1} title="Cut">
        <div class="write-row">
          <WriteIn label="Product" value={computed?.head.product} wide />
          <WriteIn label="Cut into" value={card?.cutBy ?? null} wide />
          <WriteIn label="Finished, all" value={inputs?.finished} unit="g" />
          <WriteIn label="Moulds" value={inputs?.moulds} />
        </div>
        <div class="write-row">
          <WriteIn label="Length" value={inputs?.length} unit="mm" />
          <WriteIn label="Slice" value={inputs?.thickness} unit="mm" />
          <WriteIn label="Each end" value={inputs?.endTrim} unit="mm" />
          <WriteIn label="Blade" value={inputs?.kerf} unit="mm" />
          <WriteIn label="Slices a portion" value={inputs?.slicesPerPortion} />
          <WriteIn label="Portion by weight" value={inputs?.packMass} unit="g" />
          <WriteIn label="Ends, crumbs" value={inputs?.endLoss} unit="%" />
        </div>
        <div class="write-row">
          <WriteIn label="One mould" value={results?.perMould} unit="g" />
          <WriteIn label="Slices in all" value={results?.slices} />
          <WriteIn label="A slice" value={results?.sliceMass} unit="g" />
          <WriteIn label="Portions" value={results?.portions} />
          <WriteIn label="A portion" value={results?.portion} unit="g" />
          <WriteIn label="Sold in all" value={results?.sold} unit="g" />
        </div>
      </Block>
      <Block no={2} title="Price" stacked>
        <div class="write-row">
          <WriteIn label="Food, the batch" value={results?.food} />
          <WriteIn label="All costs, the batch" value={results?.full} />
          <WriteIn label={card?.shareName ?? 'Gross profit, of price'} value={inputs?.share} unit="%" />
          <WriteIn label="Tax" value={inputs?.tax} unit="%" />
        </div>
        <table class="sheet-table">
          <thead>
            <tr>
              <th scope="col">For</th>
              <th scope="col">Before tax</th>
              <th scope="col">With tax</th>
              <th scope="col">On the menu</th>
            </tr>
          </thead>
          <tbody>
            {(card?.prices ?? BLANK_PRICES).map((row) => (
              <tr key={row.id}>
                <th scope="row">{row.label}</th>
                <td>
                  <Cell value={row.exTax} />
                </td>
                <td>
                  <Cell value={row.incTax} />
                </td>
                <td />
              </tr>
            ))}
          </tbody>
        </table>
      </Block>
      <Block no={3} title="As cut">
        <div class="write-row">
          <WriteIn label="Slices cut" />
          <WriteIn label="Mean of ten" unit="g" />
          <WriteIn label="Ends, crumbs" unit="g" />
          <WriteIn label="Out of chill, from" />
          <WriteIn label="Back by" />
          <WriteIn label="Cut by, date" />
        </div>
      </Block>
    </PrintCard>
  );
}
