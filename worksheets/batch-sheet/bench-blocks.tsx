import * as say from '#words/batch-sheet/bench-blocks.ts';
import type {
  FillBlock,
  Materials,
  SaltBlock,
  SheetHeader,
  SheetModel,
  TemperatureLimit,
} from './sheet-model.ts';
import { Block, Cell, RowHead, WriteIn } from './write-in.tsx';

/** Block 1: what is made, for whom, under which rules. */
export function HeaderBlock({ header }: { header: SheetHeader }) {
  return (
    <Block no={1} title={say.batch}>
      <div class="write-row">
        <WriteIn label={say.product} value={header.product} wide />
        <WriteIn label={say.batchNo} value={header.batchNo} />
        <WriteIn label={say.kitchen} value={header.kitchen} wide />
      </div>
      <div class="write-row">
        <WriteIn label={say.family} value={header.family} wide />
        <WriteIn label={say.moulds} value={header.moulds} wide />
        <WriteIn label={say.portions} value={header.portions} />
        <WriteIn label={say.madeBy} value={header.madeBy} />
        <WriteIn label={say.shiftStart} />
      </div>
    </Block>
  );
}

/** The batch in one row, for a copy that does not carry the whole header. */
export function BatchLine({ header }: { header: SheetHeader }) {
  return (
    <div class="batch-line">
      <div class="write-row">
        <WriteIn label={say.product} value={header.product} wide />
        <WriteIn label={say.batchNo} value={header.batchNo} />
        <WriteIn label={say.kitchen} value={header.kitchen} wide />
      </div>
    </div>
  );
}

/** Block 2: the two boxes a server asks for. */
export function WarningsBlock({ warnings }: { warnings: SheetModel['warnings'] }) {
  return (
    <Block no={2} title={say.warnings}>
      <div class="write-row">
        <WriteIn label={say.allergens} value={warnings.allergens} broad />
        <WriteIn label={say.audience} value={warnings.audience} broad />
        <WriteIn label={say.changedInitials} />
      </div>
    </Block>
  );
}

/** Block 3: what is checked before the first irreversible step. */
export function PreStartBlock({ preStart }: { preStart: SheetModel['preStart'] }) {
  return (
    <Block no={3} title={say.beforeYouStart}>
      <ul class="ticks">
        <li>{say.bathAndChillerFree}</li>
        <li>{say.grinderPartsCounted}</li>
        <li>{say.areaCleaned}</li>
        <li>{say.scaleChecked}</li>
      </ul>
      <div class="write-row">
        <WriteIn label={say.probe} value={preStart.probes} />
        <WriteIn label={say.probe2} value={preStart.probeError} unit="°C" />
        <WriteIn label={say.iceReads} unit="°C" />
        <WriteIn label={say.scaleStep} value={preStart.scaleStep} unit="g" />
        <WriteIn label={say.checkMass} unit="g" />
        <WriteIn label={say.chillerAir} unit="°C" />
        <WriteIn label={say.initials} />
      </div>
    </Block>
  );
}

/** Block 4: every material with its lot and its true weight. */
export function MaterialsBlock({ materials, blank = false }: { materials: Materials; blank?: boolean }) {
  const meats = blank ? blankRows(4) : materials.meats;
  const others = blank ? blankRows(12) : materials.others;
  const half = Math.ceil(others.length / 2);
  return (
    <Block no={4} title={say.rawMaterials} stacked>
      {meats.length > 0 ? (
        <table class="sheet-table">
          <colgroup>
            <col />
            <col class="col-figure" />
            <col class="col-narrow" />
            <col class="col-narrow" />
            <col class="col-lot" />
            <col class="col-write" />
            <col class="col-write" />
            <col class="col-write" />
          </colgroup>
          <thead>
            <tr>
              <th scope="col">{say.meatFatLiver}</th>
              <th scope="col">{say.planG}</th>
              <th scope="col">≤ °C</th>
              <th scope="col">{say.cIn}</th>
              <th scope="col">{say.lotApproval}</th>
              <th scope="col">{say.useBy}</th>
              <th scope="col">{say.actualG}</th>
              <th scope="col">{say.initials}</th>
            </tr>
          </thead>
          <tbody>
            {meats.map((row) => (
              <tr key={row.id}>
                <RowHead name={row.name} />
                <td class="figure">
                  <Cell value={row.planned} />
                </td>
                <td class="figure">{row.limit}</td>
                <td />
                <td>{row.lot}</td>
                <td />
                <td class="figure">
                  <Cell value={row.actual} />
                </td>
                <td />
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
      <div class="sheet-pair">
        {[others.slice(0, half), others.slice(half)].map((rows, column) =>
          rows.length > 0 ? (
            <table class="sheet-table" key={column === 0 ? 'first' : 'second'}>
              <colgroup>
                <col />
                <col class="col-figure" />
                <col class="col-write" />
                <col class="col-write" />
              </colgroup>
              <thead>
                <tr>
                  <th scope="col">{say.other}</th>
                  <th scope="col">{say.planG}</th>
                  <th scope="col">{say.lot}</th>
                  <th scope="col">{say.actualG}</th>
                </tr>
              </thead>
              <tbody>
                {rows.map((row) => (
                  <tr key={row.id}>
                    <RowHead name={row.name} />
                    <td class="figure">
                      <Cell value={row.planned} />
                    </td>
                    <td>{row.lot}</td>
                    <td class="figure">
                      <Cell value={row.actual} />
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          ) : null,
        )}
      </div>
      {materials.gathered ? (
        <div class="gathered-row">
          <span>
            <strong>{materials.gathered.name}</strong>, g: {materials.gathered.gathered}
          </span>
          <span class="figure">
            <Cell value={materials.gathered.planned} />
          </span>
          <span />
        </div>
      ) : null}
      <p class="rule-line">
        {say.totalInTheBowlMeatBlock(
          <strong>{materials.total?.text ?? '________ g'}</strong>,
          <strong>{materials.meatBlock?.text ?? '________ g'}</strong>,
          materials.onCard.length > 0 ? say.moreLinesOnTheWeighUp(materials.onCard.length) : '',
        )}
      </p>
    </Block>
  );
}

function blankRows(count: number): Materials['meats'] {
  return Array.from({ length: count }, (_, index) => ({
    id: `blank-${index}`,
    name: '',
    planned: null,
    limit: null,
    lot: null,
    actual: null,
    staysOnBench: true,
  }));
}

/** Block 6: salt from every source, and the correction after the test poach. */
export function SaltBlockView({ salt }: { salt: SaltBlock }) {
  return (
    <Block no={6} title={say.saltAllSources}>
      <div class="said-row">
        <p class="rule-line">
          {salt.elsewhere ??
            say.targetTotalOnWater(
              <strong>{salt.target ? <Cell value={salt.target} /> : say.ofTotal}</strong>,
              <strong>{salt.total ?? say.ofTotal}</strong>,
              <strong>{salt.onWater ?? '______ %'}</strong>,
              salt.sources ? ` · ${salt.sources}` : '',
              salt.lined ? ` · ${salt.lined}` : '',
            )}
        </p>
        <WriteIn label={say.afterTestPoach} unit="g per kg" />
      </div>
    </Block>
  );
}

/** Block 7: the cold chain through grinder and bowl. */
export function TemperaturesBlock({ limits }: { limits: readonly TemperatureLimit[] }) {
  return (
    <Block no={7} title={say.cTimeInitials}>
      <div class="write-row">
        {limits.map((limit) => (
          <WriteIn key={limit.label} label={`${limit.label} ${limit.limit}`} unit="°C" />
        ))}
      </div>
    </Block>
  );
}

/** Block 8: the sample that is cooked, cooled and tasted. */
export function PoachBlock() {
  return (
    <Block no={8} title={say.testPoachTasteCold}>
      <div class="write-row">
        <WriteIn label={say.raw} unit="g" />
        <WriteIn label={say.cooked} unit="g" />
        <WriteIn label={say.loss} unit="%" />
        <WriteIn label={say.core} unit="°C" />
        <WriteIn label={say.tastedAt} unit="°C" />
        <WriteIn label={say.verdict} wide />
      </div>
    </Block>
  );
}

/** Block 9: what goes into each mould, and what went in. */
export function FillBlockView({ fill }: { fill: FillBlock }) {
  return (
    <Block no={9} title={say.fill}>
      <p class="rule-line">
        {say.density(
          fill.moulds.length > 0
            ? fill.moulds.map((mould) => (
                <span key={mould.id}>
                  {say.fillHeadspace(
                    mould.name,
                    <strong>{mould.fill ? <Cell value={mould.fill} /> : '______ g'}</strong>,
                    mould.headspace ? <Cell value={mould.headspace} /> : '____ mm',
                    mould.lining ? say.lining(mould.lining) : '',
                  )}{' '}
                </span>
              ))
            : say.fillPerMouldGHeadspaceMm,
          fill.density ? <Cell value={fill.density} /> : '______ g/mL',
        )}
      </p>
      <div class="write-row">
        {fill.actual.map((grams, index) => (
          <WriteIn key={`mould-${index + 1}`} label={say.mould(index + 1)} value={grams} unit="g" />
        ))}
        <WriteIn label={say.filledAt} unit="time" />
      </div>
    </Block>
  );
}
