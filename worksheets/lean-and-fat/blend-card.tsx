import type { BlendQuality } from '@larderwright/calc/blend';
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
  ['fat', 'Fat from to'],
  ['protein', 'Protein from to'],
  ['salt', 'Salt from to'],
  ['liver', 'Liver from to'],
  ['water-to-protein', 'Water : protein'],
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
      title="Lean and fat"
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={[...new Set(onPaper.flatMap(({ stops }) => stops))]}
      standing={standing}
      noRules="Rule set: none, nothing here is judged by one"
    >
      <Block no={1} title="Aim">
        <div class="write-row">
          <WriteIn label="Product" value={computed?.head.product} wide />
          <WriteIn label="To make" value={card?.total} unit="kg" />
          <WriteIn label="Fat wanted" value={card?.fatTarget} unit="%" />
        </div>
        <div class="write-row">
          {BANDS.map(([quality, label]) => (
            <WriteIn key={quality} label={label} value={card?.bands[quality]} />
          ))}
        </div>
        <div class="write-row">
          <WriteIn label="Sold under the name" value={card?.soldUnder} wide />
          <WriteIn label="Its limits" value={card?.limits} broad />
          <WriteIn label="Finished, of raw" value={card?.yield} unit="%" />
        </div>
        <SheetVerdicts verdicts={onPaper.flatMap(({ verdicts }) => verdicts)} />
      </Block>
      <Block no={2} title="Materials" stacked>
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
                ...['Material', 'Fat %', 'Protein %', 'Water %', 'Price', 'Stock'],
                ...['Share', 'Fixed', 'Square g', 'Cheap g', 'Fat test'],
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
      <Block no={3} title="Square">
        <div class="write-row">
          <WriteIn label="Fat" value={card?.square.fat} unit="%" />
          <WriteIn label="Protein" value={card?.square.protein} unit="%" />
          <WriteIn label="Water" value={card?.square.water} unit="%" />
          <WriteIn label="Water : protein" value={card?.square.ratio} />
          <WriteIn label="Cost" value={card?.square.cost} />
          <WriteIn label="Balanced by" />
        </div>
      </Block>
    </PrintCard>
  );
}
