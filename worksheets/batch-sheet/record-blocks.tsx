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
    <Block no={10} title="COOK, at the coldest point" stacked>
      <div class="write-row">
        <WriteIn label="Limit" value={cook.limit} unit="°C for" wide />
        <WriteIn label="Action, with probe error" value={cook.action} unit="°C" />
        <WriteIn label="Bath" value={cook.medium} unit="°C" />
        <WriteIn label="Oven" value={cook.oven} unit="°C" />
      </div>
      <div class="write-row">
        <WriteIn label="In" value={cook.started} unit="time" />
        <WriteIn label="Limit reached" value={cook.limitReached} unit="time" />
        <WriteIn label="Held until" value={cook.heldUntil} unit="time" />
        <WriteIn label="Out" value={cook.ended} unit="time" />
        <WriteIn label="Peak" value={cook.peak} unit="°C" />
        <WriteIn label="Initials" />
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
    <Block no={11} title="COOL, at the warmest point" stacked>
      <div class="write-row">
        <WriteIn label="Press" value={cool.press} unit="kg" />
        <WriteIn label="Pressure" value={cool.pressure} unit="kPa" />
        <WriteIn label="Press on at" unit="time" />
        <WriteIn label="Clock starts" value={cool.started} unit="time" />
        <WriteIn label="Chilled by" wide />
        <WriteIn label="Ice topped up" unit="time" />
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
              <th scope="col">Leg</th>
              <th scope="col">By</th>
              <th scope="col">Took</th>
              <th scope="col">Verdict</th>
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
          <WriteIn label="Leg 1: from °C to °C, at latest" unit="time" wide />
          <WriteIn label="Leg 1" unit="pass / fail" />
          <WriteIn label="Leg 2: from °C to °C, at latest" unit="time" wide />
          <WriteIn label="Leg 2" unit="pass / fail" />
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
    <Block
      no={12}
      title="Deviation: what happened · product decision · cause · prevention · who, when"
      stacked
    >
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
    <Block no={13} title="Yield">
      <div class="write-row">
        <WriteIn label="Raw fill" value={yields.raw} unit="g" />
        <WriteIn label="Finished" value={yields.finished} unit="g" />
        <WriteIn label="Loss" value={yields.loss} unit="%" />
        <WriteIn label="Trim" unit="g" />
      </div>
    </Block>
  );
}

export function StoreBlock() {
  return (
    <Block no={14} title="Unmould, store">
      <div class="write-row">
        <WriteIn label="After 12 h: when" />
        <WriteIn label="Place, ≤ 5 °C / 41 °F" wide />
        <WriteIn label="Look, smell, defects" wide />
      </div>
    </Block>
  );
}

/** Block 15: the date and the trace code. */
export function LabelBlockView({ label }: { label: LabelBlock }) {
  return (
    <Block no={15} title="Date, label">
      <div class="write-row">
        <WriteIn label="Use by, counted from the cook" value={label.useBy} wide />
        <WriteIn label="Trace code" value={label.trace} />
      </div>
    </Block>
  );
}

/** Block 16: release needs a second person. */
export function SignOffBlock({ signOffs }: { signOffs: SheetModel['signOffs'] }) {
  return (
    <Block no={16} title="Release">
      <div class="write-row">
        <WriteIn label="Made by" value={signOffs.made} wide />
        <WriteIn label="Checked by (another person)" value={signOffs.checked} wide />
        <WriteIn label="Verified within 7 days" value={signOffs.verified} wide />
      </div>
    </Block>
  );
}
