import type { BlendQuality } from '@larderwright/calc/blend';
import * as say from '#words/lean-and-fat/blend-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { SheetVerdicts } from '../batch-sheet/sheet-verdict.tsx';
import { Block, Cell, RowHead, WriteIn } from '../batch-sheet/write-in.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import { useShared } from '../state/use-shared.ts';
import { $asked } from './asked.ts';
import type { MaterialRow } from './card-model.ts';
import type { BlendComputed } from './compute.ts';

const BLANK_ROWS: readonly MaterialRow[] = Array.from({ length: 8 }, (_, row) => ({
  id: `${row}`,
  name: '',
  fat: null,
  protein: null,
  water: null,
  price: null,
  stock: null,
  share: null,
  fixed: null,
  square: null,
}));

const BANDS: readonly (readonly [BlendQuality, string])[] = [
  ['fat', say.fatFromTo],
  ['protein', say.proteinFromTo],
  ['salt', say.saltFromTo],
  ['liver', say.liverFromTo],
  ['water-to-protein', say.waterProtein],
];

interface BlendCardProps {
  computed: BlendComputed | null;
  paper: Paper;
  standing: string;
}

/** The balance on paper: the materials with their figures, the square, and the cheapest blend that was asked for. */
export function BlendCard({ computed, paper, standing }: BlendCardProps) {
  const asked = useShared($asked);
  const card = computed?.card ?? null;
  const answered = computed && asked.state === 'answered' && asked.slice === computed.slice ? asked : null;
  const blend = answered?.answer.state === 'optimal' ? answered.answer.blend : null;
  const onPaper = [card?.standard, answered?.paper].filter((one) => one !== undefined);
  const cheapest = (id: string) => {
    const found = blend?.shares.find(({ materialId }) => materialId === id);
    return found ? ({ text: found.massG.toFixed(0), flag: 'W' } as const) : null;
  };
  const rows = card && card.rows.length > 0 ? card.rows : BLANK_ROWS;
  return (
    <PrintCard
      title={say.leanAndFat}
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={[...new Set(onPaper.flatMap(({ stops }) => stops))]}
      standing={standing}
      noRules={say.ruleSetNoneNothingHereJudged}
    >
      <Block no={1} title={say.aim}>
        <div class="write-row">
          <WriteIn label={say.product} value={computed?.head.product} wide />
          <WriteIn label={say.toMake} value={card?.total} unit="kg" />
          <WriteIn label={say.fatWanted} value={card?.fatTarget} unit="%" />
        </div>
        <div class="write-row">
          {BANDS.map(([quality, label]) => (
            <WriteIn key={quality} label={label} value={card?.bands[quality]} />
          ))}
        </div>
        <div class="write-row">
          <WriteIn label={say.soldUnderTheName} value={card?.soldUnder} wide />
          <WriteIn label={say.itsLimits} value={card?.limits} broad />
          <WriteIn label={say.finishedOfRaw} value={card?.yield} unit="%" />
        </div>
        <SheetVerdicts verdicts={onPaper.flatMap(({ verdicts }) => verdicts)} />
      </Block>
      <Block no={2} title={say.materials} stacked>
        <table class="sheet-table">
          <colgroup>
            <col />
            <col class="col-figure" />
            <col class="col-figure" />
            <col class="col-figure" />
            <col class="col-write" />
            <col class="col-figure" />
            <col class="col-write" />
            <col class="col-figure" />
            <col class="col-figure" />
            <col class="col-figure" />
            <col class="col-tick" />
          </colgroup>
          <thead>
            <tr>
              {[
                ...[say.material, say.fat, say.protein, say.water, say.price, say.stock],
                ...[say.share, say.fixed, say.squareG, say.cheapG, say.fatTest],
              ].map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.id}>
                <RowHead name={row.name} />
                {[row.fat, row.protein, row.water, row.price, row.stock].map((value, index) => (
                  <td key={`${index}`}>
                    <Cell value={value} />
                  </td>
                ))}
                <td>{row.share}</td>
                {[row.fixed, row.square, cheapest(row.id)].map((value, index) => (
                  <td key={`${index}`}>
                    <Cell value={value} />
                  </td>
                ))}
                <td />
              </tr>
            ))}
          </tbody>
        </table>
      </Block>
      <Block no={3} title={say.square}>
        <div class="write-row">
          <WriteIn label={say.fat2} value={card?.square.fat} unit="%" />
          <WriteIn label={say.protein2} value={card?.square.protein} unit="%" />
          <WriteIn label={say.water2} value={card?.square.water} unit="%" />
          <WriteIn label={say.waterProtein} value={card?.square.ratio} />
          <WriteIn label={say.cost} value={card?.square.cost} />
          <WriteIn label={say.balancedBy} />
        </div>
      </Block>
    </PrintCard>
  );
}
