import * as say from '#words/batch-sheet/copies.ts';
import {
  BatchLine,
  FillBlockView,
  HeaderBlock,
  MaterialsBlock,
  PoachBlock,
  PreStartBlock,
  SaltBlockView,
  TemperaturesBlock,
  WarningsBlock,
} from './bench-blocks.tsx';
import { CureBlockView } from './cure-block.tsx';
import { CurveStrip } from './curve-strip.tsx';
import type { SheetCode } from './draw-code.ts';
import {
  CookBlockView,
  CoolBlockView,
  DeviationBlock,
  LabelBlockView,
  SignOffBlock,
  StoreBlock,
  YieldBlockView,
} from './record-blocks.tsx';
import type { SheetModel } from './sheet-model.ts';
import { type Paper, SheetPage } from './sheet-page.tsx';

export interface CopyProps {
  model: SheetModel;
  paper: Paper;
  standing: string;
  /** The square code that leads from paper to record. */
  code?: SheetCode | null | undefined;
  /** What this print is, where it is not the kitchen's own. */
  mark?: string | undefined;
}

/** Blocks 1–9: what the bench works from. */
function BenchBlocks({ model }: { model: SheetModel }) {
  const { meats, others } = model.materials;
  return (
    <>
      <HeaderBlock header={model.header} />
      <WarningsBlock warnings={model.warnings} />
      <PreStartBlock preStart={model.preStart} />
      <MaterialsBlock materials={model.materials} blank={meats.length + others.length === 0} />
      <CureBlockView cure={model.cure} />
      <SaltBlockView salt={model.salt} />
      <TemperaturesBlock limits={model.temperatures} />
      <PoachBlock />
      <FillBlockView fill={model.fill} />
    </>
  );
}

/** Blocks 10–16: what proves the batch. */
function RecordBlocks({ model }: { model: SheetModel }) {
  return (
    <>
      <CookBlockView cook={model.cook} />
      {model.curve ? <CurveStrip curve={model.curve} /> : null}
      <CoolBlockView cool={model.cool} />
      <DeviationBlock deviations={model.deviations} />
      <div class="label-block">
        <div class="label-blocks">
          <YieldBlockView yields={model.yields} />
          <StoreBlock />
          <LabelBlockView label={model.label} />
        </div>
        <span class="label-place">{say.labelCopy5030Mm}</span>
      </div>
      <SignOffBlock signOffs={model.signOffs} />
    </>
  );
}

export function BenchCopy(props: CopyProps) {
  return (
    <SheetPage {...props} copy={say.benchCopy} rules={['bench']}>
      <BenchBlocks model={props.model} />
    </SheetPage>
  );
}

export function RecordCopy(props: CopyProps) {
  return (
    <SheetPage {...props} copy={say.recordCopy} rules={['record']}>
      <BatchLine header={props.model.header} />
      <RecordBlocks model={props.model} />
    </SheetPage>
  );
}

/** Lines that the bench copy has no room for, in the same table. */
export function MaterialsCard(props: CopyProps) {
  const { onCard } = props.model.materials;
  return (
    <SheetPage {...props} copy={say.weighUpCard} rules={['bench']}>
      <MaterialsBlock
        materials={{ ...props.model.materials, meats: [], others: onCard, gathered: null, onCard: [] }}
      />
    </SheetPage>
  );
}

/** Deviations and remarks that the record copy has no room for. */
export function NotesCard(props: CopyProps) {
  const { cook, deviations } = props.model;
  return (
    <SheetPage {...props} copy={say.recordCopyNotes} rules={['record']}>
      <BatchLine header={props.model.header} />
      <DeviationBlock deviations={deviations} />
      {cook.remarks.map((remark) => (
        <p class="rule-line" key={remark}>
          {remark}
        </p>
      ))}
    </SheetPage>
  );
}

/** All blocks on one page, where they fit. */
export function CombinedCopy(props: CopyProps) {
  return (
    <SheetPage {...props} copy={say.benchAndRecord}>
      <BenchBlocks model={props.model} />
      <RecordBlocks model={props.model} />
    </SheetPage>
  );
}
