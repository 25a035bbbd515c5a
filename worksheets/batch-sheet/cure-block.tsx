import type { CureBlock } from './sheet-model.ts';
import { SheetVerdicts } from './sheet-verdict.tsx';
import { Block, WriteIn } from './write-in.tsx';

/** Block 5: the dangerous weight, in a heavy box, with two people's names. Grams only. */
export function CureBlockView({ cure }: { cure: CureBlock | null }) {
  const lines = cure?.lines.length
    ? cure.lines
    : [{ name: null, strength: null, grams: null, actual: null, lot: null }];
  return (
    <Block no={5} title="CURING SALT: weighed in grams, by two people" heavy>
      {lines.map((line, index) => (
        <div class="write-row" key={line.name ?? index}>
          <WriteIn label="Type" value={line.name} wide />
          <WriteIn label="Nitrite on pack" value={line.strength} unit="%" />
          <WriteIn label="Weigh" value={line.grams} unit="g" />
          <WriteIn label="Scale reads" value={line.actual} unit="g" />
          <WriteIn label="Pack lot" value={line.lot} />
        </div>
      ))}
      <div class="write-row">
        <WriteIn label="Weighed by" value={cure?.weighedBy} wide />
        <WriteIn label="Checked by (another person)" value={cure?.checkedBy} wide />
      </div>
      {cure ? (
        <>
          <p class="rule-line">{cure.ppm}</p>
          <SheetVerdicts verdicts={cure.verdicts} />
        </>
      ) : null}
    </Block>
  );
}
