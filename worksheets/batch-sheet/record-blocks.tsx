import * as say from '#words/batch-sheet/record-blocks.ts';
import { LogStrip } from './log-strip.tsx';
import type {
  CookBlock,
  CoolBlock,
  DeviationLine,
  LabelBlock,
  SheetModel,
  YieldBlock,
} from './sheet-model.ts';
import { SheetVerdicts } from './sheet-verdict.tsx';
import { Block, WriteIn } from './write-in.tsx';

/** Block 10: was the heat enough. */
export function CookBlockView({ cook }: { cook: CookBlock }) {
  return (
    <Block no={10} title={say.cookAtTheColdestPoint} stacked>
      <div class="write-row">
        <WriteIn label={say.limit} value={cook.limit} unit="°C for" wide />
        <WriteIn label={say.actionWithProbeError} value={cook.action} unit="°C" />
        <WriteIn label={say.bath} value={cook.medium} unit="°C" />
        <WriteIn label={say.oven} value={cook.oven} unit="°C" />
      </div>
      <div class="write-row">
        <WriteIn label={say.inWord} value={cook.started} unit="time" />
        <WriteIn label={say.limitReached} value={cook.limitReached} unit="time" />
        <WriteIn label={say.heldUntil} value={cook.heldUntil} unit="time" />
        <WriteIn label={say.out} value={cook.ended} unit="time" />
        <WriteIn label={say.peak} value={cook.peak} unit="°C" />
        <WriteIn label={say.initials} />
      </div>
      {cook.logs.length > 0 ? (
        cook.logs.map((log) => <LogStrip key={log.name} log={log} />)
      ) : (
        <LogStrip log={null} />
      )}
      <SheetVerdicts verdicts={cook.verdicts} />
      <Beside lines={cook.beside} />
      {cook.remarks.map((remark) => (
        <p class="rule-line" key={remark}>
          {remark}
        </p>
      ))}
    </Block>
  );
}

/** Information that no verdict rests on. */
function Beside({ lines }: { lines: readonly string[] }) {
  return (
    <>
      {lines.map((line) => (
        <p class="rule-line sheet-beside" key={line}>
          {line}
        </p>
      ))}
    </>
  );
}

/** Block 11: was it through the danger zone in time. */
export function CoolBlockView({ cool }: { cool: CoolBlock }) {
  return (
    <Block no={11} title={say.coolAtTheWarmestPoint} stacked>
      <div class="write-row">
        <WriteIn label={say.press} value={cool.press} unit="kg" />
        <WriteIn label={say.pressure} value={cool.pressure} unit="kPa" />
        <WriteIn label={say.pressOnAt} unit="time" />
        <WriteIn label={say.clockStarts} value={cool.started} unit="time" />
        <WriteIn label={say.chilledBy} wide />
        <WriteIn label={say.iceToppedUp} unit="time" />
      </div>
      {cool.legs.length > 0 ? (
        <table class="sheet-table">
          <colgroup>
            <col />
            <col class="col-figure" />
            <col class="col-lot" />
            <col class="col-verdict" />
          </colgroup>
          <thead>
            <tr>
              <th scope="col">{say.leg}</th>
              <th scope="col">{say.by}</th>
              <th scope="col">{say.took}</th>
              <th scope="col">{say.verdict}</th>
            </tr>
          </thead>
          <tbody>
            {cool.legs.map((leg) => (
              <tr key={leg.title}>
                <th scope="row">{leg.title}</th>
                <td class="figure">{leg.latest}</td>
                <td>{leg.elapsed}</td>
                <td>{leg.verdict ? <SheetVerdicts verdicts={[leg.verdict]} /> : null}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : (
        <div class="write-row">
          <WriteIn label={say.leg1FromCToC} unit="time" wide />
          <WriteIn label={say.leg1} unit="pass / fail" />
          <WriteIn label={say.leg2FromCToC} unit="time" wide />
          <WriteIn label={say.leg2} unit="pass / fail" />
        </div>
      )}
      {cool.logs.length > 0 ? (
        cool.logs.map((log) => <LogStrip key={log.name} log={log} />)
      ) : (
        <LogStrip log={null} />
      )}
      <SheetVerdicts verdicts={cool.verdicts} />
      <Beside lines={cool.beside} />
    </Block>
  );
}

/** Block 12: what went wrong, and what became of the product. */
export function DeviationBlock({ deviations }: { deviations: readonly DeviationLine[] }) {
  return (
    <Block no={12} title={say.deviationWhatHappenedProduct} stacked>
      {deviations.map((deviation) => (
        <p class="rule-line" key={deviation.id}>
          {deviation.text}
        </p>
      ))}
      <div class="write-lines">
        {Array.from({ length: deviations.length > 0 ? 1 : 4 }, (_, index) => (
          <span class="write-line" key={`line-${index}`} />
        ))}
      </div>
    </Block>
  );
}

/** Block 13 and 14: what came out, and where it lies. */
export function YieldBlockView({ yields }: { yields: YieldBlock }) {
  return (
    <Block no={13} title={say.yieldWord}>
      <div class="write-row">
        <WriteIn label={say.rawFill} value={yields.raw} unit="g" />
        <WriteIn label={say.finished} value={yields.finished} unit="g" />
        <WriteIn label={say.loss} value={yields.loss} unit="%" />
        <WriteIn label={say.trim} unit="g" />
      </div>
    </Block>
  );
}

export function StoreBlock() {
  return (
    <Block no={14} title={say.unmouldStore}>
      <div class="write-row">
        <WriteIn label={say.after12HWhen} />
        <WriteIn label={say.place5C41F} wide />
        <WriteIn label={say.lookSmellDefects} wide />
      </div>
    </Block>
  );
}

/** Block 15: the date and the trace code. */
export function LabelBlockView({ label }: { label: LabelBlock }) {
  return (
    <Block no={15} title={say.dateLabel}>
      <div class="write-row">
        <WriteIn label={say.useByCountedFromTheCook} value={label.useBy} wide />
        <WriteIn label={say.traceCode} value={label.trace} />
      </div>
    </Block>
  );
}

/** Block 16: release needs a second person. */
export function SignOffBlock({ signOffs }: { signOffs: SheetModel['signOffs'] }) {
  return (
    <Block no={16} title={say.release}>
      <div class="write-row">
        <WriteIn label={say.madeBy} value={signOffs.made} wide />
        <WriteIn label={say.checkedByAnotherPerson} value={signOffs.checked} wide />
        <WriteIn label={say.verifiedWithin7Days} value={signOffs.verified} wide />
      </div>
    </Block>
  );
}
