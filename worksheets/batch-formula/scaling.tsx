import { type FormulaLine, formulaStage, type ScaleProblem } from '@larderwright/calc/formula';
import { mouldStage } from '@larderwright/calc/mould';
import { fixedText } from '@larderwright/calc/quantities';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Answer } from '../parts/answer.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { gramsText } from '../parts/number-text.ts';
import { $batch, editAt } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { NEW_SCALE_FORM, requestScale, type ScaleForm, type ScaleTo } from './scale-request.ts';

const WAYS: readonly { to: ScaleTo; label: string }[] = [
  { to: 'factor', label: 'by a factor' },
  { to: 'total', label: 'to a total' },
  { to: 'meat', label: 'to a meat block' },
  { to: 'moulds', label: 'to fill the moulds' },
];

const PROBLEMS: Readonly<Record<ScaleProblem, string>> = {
  'unusable-factor': 'Write a number above zero.',
  'unknown-total': 'The batch cannot be scaled: a weight is blank or cannot be read.',
  'percent-over-100': 'The batch cannot be scaled: its percentages add up to more than everything.',
  'no-anchor': 'Everything is a percentage: write at least one line in grams, or scale to a total.',
};

const NO_TABLE = new Map();
const weightsOf = (lines: FormulaLine[]) =>
  formulaStage({ familyId: null, lines, saltTarget: NEW_SCALE_FORM.factor }, { composition: NO_TABLE }).values
    .planned;

/** Scales the planned formula, after showing what each line would become. */
export function Scaling() {
  const [form, setForm] = useState<ScaleForm>(NEW_SCALE_FORM);
  const [before, setBefore] = useState<{ lines: FormulaLine[]; batchId: string } | null>(null);
  const undo = useRef<HTMLButtonElement>(null);
  const batch = useShared($batch);
  const { lines } = batch.formula;
  const fillG = mouldStage(batch.mould, { totalMassG: null }).values.capacityG;
  const scaled = requestScale(form, lines, fillG);
  const undoable = before?.batchId === batch.id ? before : null;
  useEffect(() => {
    if (undoable) undo.current?.focus();
  }, [undoable]);

  const apply = () => {
    if (!scaled?.ok) return;
    setBefore({ lines, batchId: batch.id });
    editAt('formula.lines', scaled.lines);
    setForm({ ...form, factor: NEW_SCALE_FORM.factor });
  };
  return (
    <>
      <ScaleFields form={form} onForm={setForm} fillG={fillG} />
      {scaled === null ? null : scaled.ok ? (
        <>
          <BeforeAfter before={lines} after={scaled.lines} factor={scaled.factor} />
          {lines.some(({ actual }) => actual.text !== '') ? (
            <p class="field-problem">
              Weights and lots already written down belong to the old batch and are cleared.
            </p>
          ) : null}
          <button type="button" class="press-first" onClick={apply}>
            Write these weights into the formula
          </button>
        </>
      ) : (
        <p class="field-problem">{PROBLEMS[scaled.problem]}</p>
      )}
      <div class="removed-row" role="status">
        {undoable ? (
          <>
            <span>The formula was scaled.</span>
            <button
              ref={undo}
              type="button"
              onClick={() => {
                editAt('formula.lines', undoable.lines);
                setBefore(null);
              }}
            >
              Put the old weights back
            </button>
          </>
        ) : null}
      </div>
    </>
  );
}

function ScaleFields(props: { form: ScaleForm; onForm: (form: ScaleForm) => void; fillG: number | null }) {
  const { form, onForm, fillG } = props;
  const { to } = form;
  return (
    <>
      <fieldset class="views">
        <legend>Scale</legend>
        {WAYS.map((way) => (
          <label key={way.to}>
            <input
              type="radio"
              name="scale-to"
              checked={to === way.to}
              onChange={() => onForm({ ...form, to: way.to })}
            />
            {way.label}
          </label>
        ))}
      </fieldset>
      <div class="fields">
        {to === 'factor' ? (
          <NumberBox
            label="Factor"
            kind="mass"
            entry={form.factor}
            onEntry={(factor) => onForm({ ...form, factor })}
            unitSlot={<span class="field-unit">times</span>}
            hint="2 doubles, 1/2 halves. Salt and curing salt follow exactly; taste strong spices above fivefold."
          />
        ) : null}
        {to === 'total' ? (
          <NumberBox
            label="Everything in the bowl"
            kind="mass"
            entry={form.total}
            onEntry={(total) => onForm({ ...form, total })}
            units={['g', 'kg', 'lb']}
          />
        ) : null}
        {to === 'meat' ? (
          <NumberBox
            label="Meat block"
            kind="mass"
            entry={form.meat}
            onEntry={(meat) => onForm({ ...form, meat })}
            units={['g', 'kg', 'lb']}
            hint="Lean, fat, liver and offal together."
          />
        ) : null}
        {to === 'moulds' ? (
          <>
            <NumberBox
              label="For the test poach"
              kind="mass"
              entry={form.testPoach}
              onEntry={(testPoach) => onForm({ ...form, testPoach })}
            />
            <NumberBox
              label="Left on bowl and filler"
              kind="fraction"
              entry={form.residue}
              onEntry={(residue) => onForm({ ...form, residue })}
            />
          </>
        ) : null}
      </div>
      {to === 'moulds' ? (
        <Answer
          label="All moulds take"
          value={fillG === null ? null : gramsText(fillG)}
          missing="Cannot tell: fill in the mould worksheet first"
          worked={<p>Fill of each mould times how many of it, by the mould worksheet. Derived: a sum.</p>}
        />
      ) : null}
    </>
  );
}

function BeforeAfter(props: { before: FormulaLine[]; after: FormulaLine[]; factor: number }) {
  const { before, after, factor } = props;
  const [old, next] = [weightsOf(before), weightsOf(after)];
  const text = (massG: number | null | undefined) => (massG == null ? 'not known' : gramsText(massG));
  return (
    <FigureTable
      caption={`Before and after, × ${fixedText(factor, 4).replace(/\.?0+$/, '')}`}
      columns={['Line', 'Before', 'After']}
      rows={old.lines.map((line) => ({
        key: line.lineId,
        head: line.name || 'Unnamed line',
        cells: [text(line.massG), text(next.lines.find(({ lineId }) => lineId === line.lineId)?.massG)],
      }))}
      foot={{ key: 'all', head: 'Everything in the bowl', cells: [text(old.totalG), text(next.totalG)] }}
    />
  );
}
