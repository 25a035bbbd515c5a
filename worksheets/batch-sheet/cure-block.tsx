import * as say from '#words/batch-sheet/cure-block.ts';
import type { CureBlock } from './sheet-model.ts';
import { SheetVerdicts } from './sheet-verdict.tsx';
import { Block, WriteIn } from './write-in.tsx';

/** Block 5: the dangerous weight, in a heavy box, with two people's names. Grams only. */
export function CureBlockView({ cure }: { cure: CureBlock | null }) {
  const lines = cure?.lines.length
    ? cure.lines
    : [{ name: null, strength: null, grams: null, actual: null, lot: null }];
  return (
    <Block no={5} title={say.curingSaltWeighedGramsTwo} heavy>
      {lines.map((line, index) => (
        <div class="write-row" key={line.name ?? index}>
          <WriteIn label={say.type} value={line.name} wide />
          <WriteIn label={say.nitriteOnPack} value={line.strength} unit="%" />
          <WriteIn label={say.weigh} value={line.grams} unit="g" />
          <WriteIn label={say.scaleReads} value={line.actual} unit="g" />
          <WriteIn label={say.packLot} value={line.lot} />
        </div>
      ))}
      <div class="write-row">
        <WriteIn label={say.weighedBy} value={cure?.weighedBy} wide />
        <WriteIn label={say.checkedByAnotherPerson} value={cure?.checkedBy} wide />
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
