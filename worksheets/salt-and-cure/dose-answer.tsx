import type { CuringSaltDose, LineDose } from '@larderwright/calc/cure';
import type { FormulaLine } from '@larderwright/calc/formula';
import { enteredEntry, entryValue, fixedText, plainText } from '@larderwright/calc/quantities';
import { useState } from 'preact/hooks';
import { Answer } from '../parts/answer.tsx';
import { percentText } from '../parts/number-text.ts';
import { $batch, editAt } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import type { CureComputed } from './compute.ts';
import { BASIS_WORDS } from './limit-words.ts';

/** The dose of the one curing salt, with the way into the formula; or why none is given. */
export function DoseAnswer({ computed, salts }: { computed: CureComputed; salts: readonly FormulaLine[] }) {
  const { dose } = computed.cure;
  return (
    <Answer
      label="Curing salt for the nitrite wanted"
      value={dose?.dose.ok ? `Weigh ${plainText(dose.dose.doseG)} g` : null}
      missing={useWhyNoDose(computed, salts)}
      worked={dose ? <DoseWorked dose={dose} computed={computed} /> : <DoseRule />}
    >
      {dose?.dose.ok ? <WriteDose lineId={dose.lineId} doseG={dose.dose.doseG} /> : null}
    </Answer>
  );
}

const REFUSED: Readonly<Record<Extract<CuringSaltDose, { ok: false }>['reason'], string>> = {
  'unusable-input': 'No dose: one of the numbers cannot be used',
  'target-over-ceiling': 'Refused: the nitrite wanted is over the limit of this rule',
  'other-sources-over-ceiling': 'Refused: with what other ingredients bring it would be over the limit',
  'strength-below-target': 'Refused: this curing salt is too weak for the nitrite wanted',
  'too-small-to-weigh': 'Refused: too little for this scale to weigh',
};

/** The first thing that stands in the way of a dose. */
function useWhyNoDose({ cure }: CureComputed, salts: readonly FormulaLine[]): string {
  const { cure: slice } = useShared($batch);
  if (cure.dose && !cure.dose.dose.ok) return REFUSED[cure.dose.dose.reason];
  if (cure.ruleSet === null) return 'Cannot tell: choose whose rule on nitrite first';
  const targetPpm = entryValue('ppm', slice.nitriteTarget);
  if (targetPpm === null) return 'Cannot tell: write the nitrite wanted';
  if (targetPpm === 0) return 'None: no nitrite is wanted';
  if (entryValue('mass', slice.scaleReadability) === null)
    return 'Cannot tell: write the smallest step of the scale';
  if (salts.length > 1) return 'Cannot tell: with two curing salts the dose is yours to share out';
  const strength = salts[0]?.cure ? entryValue('fraction', salts[0].cure.nitrite) : null;
  if (strength === null) return 'Cannot tell: read the strength off the pack';
  return `Cannot tell: the weight of ${BASIS_WORDS[cure.ruleSet.ingoingBasis]} is not known`;
}

/** Writes the dose into the formula, in grams. */
function WriteDose({ lineId, doseG }: { lineId: string; doseG: number }) {
  const [written, setWritten] = useState<string | null>(null);
  const text = plainText(doseG);
  const inFormula = useShared($batch).formula.lines.find(({ id }) => id === lineId)?.amount.text === text;
  return (
    <p class="buttons" role="status">
      {inFormula ? (
        <span>{written === text ? 'Written into the formula.' : 'This is what the formula says.'}</span>
      ) : (
        <button
          type="button"
          class="press-first"
          onClick={() => {
            editAt(`formula.lines.${lineId}.amount`, enteredEntry(text, 'g'));
            setWritten(text);
          }}
        >
          Write this weight into the formula
        </button>
      )}
    </p>
  );
}

function DoseWorked({ dose, computed }: { dose: LineDose; computed: CureComputed }) {
  const { targetPpm, ceilingPpm, dose: result } = dose;
  const { ruleSet } = computed.cure;
  const basis = ruleSet ? BASIS_WORDS[ruleSet.ingoingBasis] : '';
  return (
    <>
      <p>
        Nitrite wanted × weight of {basis} ÷ strength of the curing salt. {fixedText(targetPpm, 0)} mg/kg is
        wanted
        {ceilingPpm === null
          ? ''
          : `; this rule lets in ${fixedText(ceilingPpm, 1, 'down')} mg/kg as sodium nitrite`}
        .
        {ruleSet?.ingoingBasis === 'total'
          ? ' The curing salt and the plain salt that will stand beside it are part of that weight, so both are solved together.'
          : ''}
      </p>
      {result.exactG === null ? null : <p>Before rounding: {fixedText(result.exactG, 3)} g.</p>}
      {result.ok ? (
        <p>
          On the scale {plainText(result.doseG)} g, which gives {fixedText(result.ppm, 1)} mg/kg by itself and{' '}
          {fixedText(result.allSourcesPpm, 1)} mg/kg with what is declared elsewhere. The last digit of the
          scale is worth ± {percentText(result.weighingErrorFraction)}. It is rounded down where up would pass
          the limit.
        </p>
      ) : (
        <p>
          {result.leastG === null
            ? ''
            : `The least this scale can weigh is ${fixedText(result.leastG, 2)} g: 50 of its steps. `}
          No weight is given.
        </p>
      )}
      <p>{DOSE_SOURCE}</p>
    </>
  );
}

const DOSE_SOURCE =
  'FSIS Directive 7620.3 (1995), comminuted products, solved for the weight of the mix. Nitrate is never dosed.';

/** The rule alone, where nothing can be dosed yet. */
function DoseRule() {
  return (
    <p>
      Nitrite wanted × the weight your rule counts it on ÷ strength of the curing salt, to the step of the
      scale and never over the limit. {DOSE_SOURCE}
    </p>
  );
}
