import { type FormulaLine, formulaStage, type ScaleProblem } from '@larderwright/calc/formula';
import { mouldStage } from '@larderwright/calc/mould';
import { fixedText } from '@larderwright/calc/quantities';
import { useEffect, useRef, useState } from 'preact/hooks';
import * as say from '#words/batch-formula/scaling.ts';
import { Answer } from '../parts/answer.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { gramsText } from '../parts/number-text.ts';
import { $batch, editAt } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { NEW_SCALE_FORM, requestScale, type ScaleForm, type ScaleTo } from './scale-request.ts';

const WAYS: readonly { to: ScaleTo; label: string }[] = [
  { to: 'factor', label: say.byAFactor },
  { to: 'total', label: say.toATotal },
  { to: 'meat', label: say.toAMeatBlock },
  { to: 'moulds', label: say.toFillTheMoulds },
];

const PROBLEMS: Readonly<Record<ScaleProblem, string>> = {
  'unusable-factor': say.writeANumberAboveZero,
  'unknown-total': say.batchCannotScaledWeightBlank,
  'percent-over-100': say.batchCannotScaledPercentages,
  'no-anchor': say.everythingPercentageWriteLeast,
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
            <p class="field-problem">{say.weightsLotsAlreadyWrittenDown}</p>
          ) : null}
          <button type="button" class="press-first" onClick={apply}>
            {say.writeTheseWeightsIntoFormula}
          </button>
        </>
      ) : (
        <p class="field-problem">{PROBLEMS[scaled.problem]}</p>
      )}
      <div class="removed-row" role="status">
        {undoable ? (
          <>
            <span>{say.theFormulaWasScaled}</span>
            <button
              ref={undo}
              type="button"
              onClick={() => {
                editAt('formula.lines', undoable.lines);
                setBefore(null);
              }}
            >
              {say.putTheOldWeightsBack}
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
        <legend>{say.scale}</legend>
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
            label={say.factor}
            kind="mass"
            entry={form.factor}
            onEntry={(factor) => onForm({ ...form, factor })}
            unitSlot={<span class="field-unit">{say.times}</span>}
            hint={say.n2Doubles12HalvesSalt}
          />
        ) : null}
        {to === 'total' ? (
          <NumberBox
            label={say.everythingInTheBowl}
            kind="mass"
            entry={form.total}
            onEntry={(total) => onForm({ ...form, total })}
            units={['g', 'kg', 'lb']}
          />
        ) : null}
        {to === 'meat' ? (
          <NumberBox
            label={say.meatBlock}
            kind="mass"
            entry={form.meat}
            onEntry={(meat) => onForm({ ...form, meat })}
            units={['g', 'kg', 'lb']}
            hint={say.leanFatLiverAndOffalTogether}
          />
        ) : null}
        {to === 'moulds' ? (
          <>
            <NumberBox
              label={say.forTheTestPoach}
              kind="mass"
              entry={form.testPoach}
              onEntry={(testPoach) => onForm({ ...form, testPoach })}
            />
            <NumberBox
              label={say.leftOnBowlAndFiller}
              kind="fraction"
              entry={form.residue}
              onEntry={(residue) => onForm({ ...form, residue })}
            />
          </>
        ) : null}
      </div>
      {to === 'moulds' ? (
        <Answer
          label={say.allMouldsTake}
          value={fillG === null ? null : gramsText(fillG)}
          missing={say.cannotTellFillMouldWorksheet}
          worked={<p>{say.fillEachMouldTimesHowMany}</p>}
        />
      ) : null}
    </>
  );
}

function BeforeAfter(props: { before: FormulaLine[]; after: FormulaLine[]; factor: number }) {
  const { before, after, factor } = props;
  const [old, next] = [weightsOf(before), weightsOf(after)];
  const text = (massG: number | null | undefined) => (massG == null ? say.notKnown : gramsText(massG));
  return (
    <FigureTable
      caption={say.beforeAndAfter(fixedText(factor, 4).replace(/\.?0+$/, ''))}
      columns={[say.line, say.before, say.after]}
      rows={old.lines.map((line) => ({
        key: line.lineId,
        head: line.name || say.unnamedLine,
        cells: [text(line.massG), text(next.lines.find(({ lineId }) => lineId === line.lineId)?.massG)],
      }))}
      foot={{ key: 'all', head: say.everythingInTheBowl, cells: [text(old.totalG), text(next.totalG)] }}
    />
  );
}
