import * as say from '#words/trim-and-yield/test-card.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { Block, Cell, RowHead, WriteIn } from '../batch-sheet/write-in.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import type { PileRow, TestCardModel } from './card-model.ts';
import type { YieldComputed } from './compute.ts';

/** Trials side by side in one table; more go into the next. */
const TRIALS_A_TABLE = 5;
const NAMES = [
  say.trimmedLean,
  say.usableFat,
  say.garnishPieces,
  say.skinAndBone,
  say.sinewGlandsAndWaste,
  '',
];
const NOTHING = [null, null, null];

const BLANK_CARD: TestCardModel = {
  id: 'blank',
  name: null,
  price: null,
  needed: null,
  usual: null,
  trials: [1, 2, 3].map((trial) => ({ id: `${trial}`, on: '', by: '' })),
  purchased: NOTHING,
  piles: NAMES.map((name) => ({ id: name, name, role: '', masses: NOTHING, share: null, value: null })),
  unaccounted: NOTHING,
  yields: NOTHING,
  results: {
    mean: null,
    spread: null,
    unaccounted: null,
    cost: null,
    factor: null,
    buy: null,
    buyAtLowest: null,
  },
};

interface TestCardProps {
  computed: YieldComputed | null;
  paper: Paper;
  standing: string;
}

/** The butcher's test on paper: every pile of every trial, what they say, who weighed. */
export function TestCard({ computed, paper, standing }: TestCardProps) {
  const cards = computed && computed.cards.length > 0 ? computed.cards : [BLANK_CARD];
  return (
    <PrintCard
      title={say.trimAndYieldTest}
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={[]}
      standing={standing}
      noRules={say.ruleSetNoneNothingHereJudged}
    >
      {cards.map((card, place) => (
        <OneTest key={card.id} card={card} no={place + 1} />
      ))}
      <div class="write-row">
        <WriteIn label={say.testedBy} />
        <WriteIn label={say.checkedBy} />
        <WriteIn label={say.date} />
        <WriteIn label={say.scale} />
      </div>
    </PrintCard>
  );
}

function OneTest({ card, no }: { card: TestCardModel; no: number }) {
  const { results, trials } = card;
  const starts = Array.from(
    { length: Math.max(1, Math.ceil(trials.length / TRIALS_A_TABLE)) },
    (_, table) => table * TRIALS_A_TABLE,
  );
  return (
    <Block no={no} title={card.name ?? say.test} stacked>
      <div class="write-row">
        <WriteIn label={say.speciesCutSupplier} value={card.name} broad />
        <WriteIn label={say.priceAsBought} value={card.price} />
        <WriteIn label={say.usualYieldHere} value={card.usual} unit="%" />
        <WriteIn label={say.trimmedWanted} value={card.needed} unit="kg" />
      </div>
      {starts.map((start) => (
        <TrialTable key={start} card={card} from={start} />
      ))}
      <div class="write-row">
        <WriteIn label={say.meanYield} value={results.mean} unit="%" />
        <WriteIn label={say.spread} value={results.spread} broad />
        <WriteIn label={say.inNoPile} value={results.unaccounted} unit="%" />
      </div>
      <div class="write-row">
        <WriteIn label={say.usableKgCosts} value={results.cost} />
        <WriteIn label={say.costFactor} value={results.factor} />
        <WriteIn label={say.buyAtTheMean} value={results.buy} unit="g" />
        <WriteIn label={say.buyAtTheLowest} value={results.buyAtLowest} unit="g" />
      </div>
    </Block>
  );
}

function TrialTable({ card, from }: { card: TestCardModel; from: number }) {
  const part = <T,>(row: readonly T[]) => row.slice(from, from + TRIALS_A_TABLE);
  const trials = part(card.trials);
  const cells = (row: readonly (Filled | null)[]) =>
    trials.map(({ id }, index) => (
      <td key={id} class="figure">
        <Cell value={part(row)[index] ?? null} />
      </td>
    ));
  const pile = (row: PileRow) => (
    <tr key={row.id}>
      <RowHead name={[row.name, row.role].filter(Boolean).join(', ')} />
      {cells(row.masses)}
      <td class="figure">
        <Cell value={row.share} />
      </td>
      <td>
        <Cell value={row.value} />
      </td>
    </tr>
  );
  return (
    <table class="sheet-table">
      <thead>
        <tr>
          <th scope="col">{say.grams}</th>
          {trials.map(({ id, on, by }, index) => (
            <th key={id} scope="col">
              {say.trial(from + index + 1, on ? `, ${on}` : '', by ? `, ${by}` : '')}
            </th>
          ))}
          <th scope="col">{say.meanShare}</th>
          <th scope="col">{say.worth}</th>
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">{say.asBought}</th>
          {cells(card.purchased)}
          <td />
          <td />
        </tr>
        {card.piles.map(pile)}
        <tr>
          <th scope="row">{say.inNoPile}</th>
          {cells(card.unaccounted)}
          <td />
          <td />
        </tr>
        <tr>
          <th scope="row">{say.yieldWord}</th>
          {cells(card.yields)}
          <td class="figure">
            <Cell value={card.results.mean} />
          </td>
          <td />
        </tr>
      </tbody>
    </table>
  );
}
