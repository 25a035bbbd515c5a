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
    <Block no={1} title="Batch">
      <div class="write-row">
        <WriteIn label="Product" value={header.product} wide />
        <WriteIn label="Batch no." value={header.batchNo} />
        <WriteIn label="Kitchen" value={header.kitchen} wide />
      </div>
      <div class="write-row">
        <WriteIn label="Family" value={header.family} wide />
        <WriteIn label="Moulds" value={header.moulds} wide />
        <WriteIn label="Portions" value={header.portions} />
        <WriteIn label="Made by" value={header.madeBy} />
        <WriteIn label="Shift, start" />
      </div>
    </Block>
  );
}

/** The batch in one row, for a copy that does not carry the whole header. */
export function BatchLine({ header }: { header: SheetHeader }) {
  return (
    <div class="batch-line">
      <div class="write-row">
        <WriteIn label="Product" value={header.product} wide />
        <WriteIn label="Batch no." value={header.batchNo} />
        <WriteIn label="Kitchen" value={header.kitchen} wide />
      </div>
    </div>
  );
}

/** Block 2: the two boxes a server asks for. */
export function WarningsBlock({ warnings }: { warnings: SheetModel['warnings'] }) {
  return (
    <Block no={2} title="Warnings">
      <div class="write-row">
        <WriteIn label="ALLERGENS" value={warnings.allergens} broad />
        <WriteIn label="AUDIENCE" value={warnings.audience} broad />
        <WriteIn label="Changed, initials" />
      </div>
    </Block>
  );
}

/** Block 3: what is checked before the first irreversible step. */
export function PreStartBlock({ preStart }: { preStart: SheetModel['preStart'] }) {
  return (
    <Block no={3} title="Before you start">
      <ul class="ticks">
        <li>Bath and chiller free</li>
        <li>Grinder parts counted</li>
        <li>Area cleaned</li>
        <li>Scale checked</li>
      </ul>
      <div class="write-row">
        <WriteIn label="Probe" value={preStart.probes} />
        <WriteIn label="Probe ±" value={preStart.probeError} unit="°C" />
        <WriteIn label="Ice reads" unit="°C" />
        <WriteIn label="Scale step" value={preStart.scaleStep} unit="g" />
        <WriteIn label="Check mass" unit="g" />
        <WriteIn label="Chiller air" unit="°C" />
        <WriteIn label="Initials" />
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
    <Block no={4} title="Raw materials" stacked>
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
              <th scope="col">Meat, fat, liver</th>
              <th scope="col">Plan g</th>
              <th scope="col">≤ °C</th>
              <th scope="col">°C in</th>
              <th scope="col">Lot, approval</th>
              <th scope="col">Use by</th>
              <th scope="col">Actual g</th>
              <th scope="col">Initials</th>
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
                  <th scope="col">Other</th>
                  <th scope="col">Plan g</th>
                  <th scope="col">Lot</th>
                  <th scope="col">Actual g</th>
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
        Total in the bowl: <strong>{materials.total?.text ?? '________ g'}</strong> · meat block:{' '}
        <strong>{materials.meatBlock?.text ?? '________ g'}</strong>
        {materials.onCard.length > 0 ? ` · ${materials.onCard.length} more lines on the weigh-up card` : ''}
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
    <Block no={6} title="Salt, all sources">
      <div class="said-row">
        <p class="rule-line">
          Target <strong>{salt.target ? <Cell value={salt.target} /> : '______ % of total'}</strong> · total{' '}
          <strong>{salt.total ?? '______ % of total'}</strong> · on water{' '}
          <strong>{salt.onWater ?? '______ %'}</strong>
          {salt.sources ? ` · ${salt.sources}` : ''}
          {salt.lined ? ` · ${salt.lined}` : ''}
        </p>
        <WriteIn label="After test poach" unit="g per kg" />
      </div>
    </Block>
  );
}

/** Block 7: the cold chain through grinder and bowl. */
export function TemperaturesBlock({ limits }: { limits: readonly TemperatureLimit[] }) {
  return (
    <Block no={7} title="°C, time, initials">
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
    <Block no={8} title="Test poach, taste cold">
      <div class="write-row">
        <WriteIn label="Raw" unit="g" />
        <WriteIn label="Cooked" unit="g" />
        <WriteIn label="Loss" unit="%" />
        <WriteIn label="Core" unit="°C" />
        <WriteIn label="Tasted at" unit="°C" />
        <WriteIn label="Verdict" wide />
      </div>
    </Block>
  );
}

/** Block 9: what goes into each mould, and what went in. */
export function FillBlockView({ fill }: { fill: FillBlock }) {
  return (
    <Block no={9} title="Fill">
      <p class="rule-line">
        {fill.moulds.length > 0
          ? fill.moulds.map((mould) => (
              <span key={mould.id}>
                {mould.name}: fill <strong>{mould.fill ? <Cell value={mould.fill} /> : '______ g'}</strong>,
                headspace {mould.headspace ? <Cell value={mould.headspace} /> : '____ mm'}
                {mould.lining ? `, lining: ${mould.lining}` : ''} ·{' '}
              </span>
            ))
          : 'Fill per mould ________ g, headspace ______ mm · '}
        density {fill.density ? <Cell value={fill.density} /> : '______ g/mL'}
      </p>
      <div class="write-row">
        {fill.actual.map((grams, index) => (
          <WriteIn key={`mould-${index + 1}`} label={`Mould ${index + 1}`} value={grams} unit="g" />
        ))}
        <WriteIn label="Filled at" unit="time" />
      </div>
    </Block>
  );
}
