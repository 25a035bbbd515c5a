import * as say from '#words/slice-and-price/slicing-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { Block, Cell, WriteIn } from '../batch-sheet/write-in.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import type { PriceRow } from './card-model.ts';
import type { SlicingComputed } from './compute.ts';

const BLANK_PRICES: readonly PriceRow[] = [say.aPortion, say.aSlice, say.aKilogram, say.aPound].map(
  (label) => ({
    id: label,
    label,
    exTax: null,
    incTax: null,
  }),
);

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
      title={say.slicePortionPrice}
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={[]}
      standing={standing}
      noRules={say.ruleSetNoneNothingHereJudged}
    >
      <Block no={1} title={say.cut}>
        <div class="write-row">
          <WriteIn label={say.product} value={computed?.head.product} wide />
          <WriteIn label={say.cutInto} value={card?.cutBy ?? null} wide />
          <WriteIn label={say.finishedAll} value={inputs?.finished} unit="g" />
          <WriteIn label={say.moulds} value={inputs?.moulds} />
        </div>
        <div class="write-row">
          <WriteIn label={say.length} value={inputs?.length} unit="mm" />
          <WriteIn label={say.slice} value={inputs?.thickness} unit="mm" />
          <WriteIn label={say.eachEnd} value={inputs?.endTrim} unit="mm" />
          <WriteIn label={say.blade} value={inputs?.kerf} unit="mm" />
          <WriteIn label={say.slicesAPortion} value={inputs?.slicesPerPortion} />
          <WriteIn label={say.portionByWeight} value={inputs?.packMass} unit="g" />
          <WriteIn label={say.endsCrumbs} value={inputs?.endLoss} unit="%" />
        </div>
        <div class="write-row">
          <WriteIn label={say.oneMould} value={results?.perMould} unit="g" />
          <WriteIn label={say.slicesInAll} value={results?.slices} />
          <WriteIn label={say.aSlice} value={results?.sliceMass} unit="g" />
          <WriteIn label={say.portions} value={results?.portions} />
          <WriteIn label={say.aPortion} value={results?.portion} unit="g" />
          <WriteIn label={say.soldInAll} value={results?.sold} unit="g" />
        </div>
      </Block>
      <Block no={2} title={say.price} stacked>
        <div class="write-row">
          <WriteIn label={say.foodTheBatch} value={results?.food} />
          <WriteIn label={say.allCostsTheBatch} value={results?.full} />
          <WriteIn label={card?.shareName ?? say.grossProfitOfPrice} value={inputs?.share} unit="%" />
          <WriteIn label={say.tax} value={inputs?.tax} unit="%" />
        </div>
        <table class="sheet-table">
          <thead>
            <tr>
              <th scope="col">{say.forWord}</th>
              <th scope="col">{say.beforeTax}</th>
              <th scope="col">{say.withTax}</th>
              <th scope="col">{say.onTheMenu}</th>
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
      <Block no={3} title={say.asCut}>
        <div class="write-row">
          <WriteIn label={say.slicesCut} />
          <WriteIn label={say.meanOfTen} unit="g" />
          <WriteIn label={say.endsCrumbs} unit="g" />
          <WriteIn label={say.outOfChillFrom} />
          <WriteIn label={say.backBy} />
          <WriteIn label={say.cutByDate} />
        </div>
      </Block>
    </PrintCard>
  );
}
