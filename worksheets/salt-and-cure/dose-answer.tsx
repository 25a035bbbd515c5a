import type { CuringSaltDose, LineDose } from '@larderwright/calc/cure';
import type { FormulaLine } from '@larderwright/calc/formula';
import { enteredEntry, entryValue, fixedText, plainText } from '@larderwright/calc/quantities';
import { useState } from 'preact/hooks';
import * as say from '#words/salt-and-cure/dose-answer.ts';
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
      label={say.curingSaltForTheNitriteWanted}
      value={dose?.dose.ok ? say.weighG(plainText(dose.dose.doseG)) : null}
      missing={useWhyNoDose(computed, salts)}
      worked={dose ? <DoseWorked dose={dose} computed={computed} /> : <DoseRule />}
    >
      {dose?.dose.ok ? <WriteDose lineId={dose.lineId} doseG={dose.dose.doseG} /> : null}
    </Answer>
  );
}

const REFUSED: Readonly<Record<Extract<CuringSaltDose, { ok: false }>['reason'], string>> = {
  'unusable-input': say.noDoseOneNumbersCannotUsed,
  'target-over-ceiling': say.refusedNitriteWantedOverLimit,
  'other-sources-over-ceiling': say.refusedWhatOtherIngredients,
  'strength-below-target': say.refusedCuringSaltTooWeak,
  'too-small-to-weigh': say.refusedTooLittleScaleWeigh,
};

/** The first thing that stands in the way of a dose. */
function useWhyNoDose({ cure, isReckonedElsewhere }: CureComputed, salts: readonly FormulaLine[]): string {
  const { cure: slice } = useShared($batch);
  if (isReckonedElsewhere) return say.noneReckonedElsewhere;
  if (cure.dose && !cure.dose.dose.ok) return REFUSED[cure.dose.dose.reason];
  if (cure.ruleSet === null) return say.cannotTellChooseWhoseRule;
  const targetPpm = entryValue('ppm', slice.nitriteTarget);
  if (targetPpm === null) return say.cannotTellWriteNitriteWanted;
  if (targetPpm === 0) return say.noneNoNitriteIsWanted;
  if (entryValue('mass', slice.scaleReadability) === null) return say.cannotTellWriteSmallestStep;
  if (salts.length > 1) return say.cannotTellTwoCuringSaltsDose;
  const strength = salts[0]?.cure ? entryValue('fraction', salts[0].cure.nitrite) : null;
  if (strength === null) return say.cannotTellReadStrengthOffPack;
  return say.cannotTellWeightNotKnown(BASIS_WORDS[cure.ruleSet.ingoingBasis]);
}

/** Writes the dose into the formula, in grams. */
function WriteDose({ lineId, doseG }: { lineId: string; doseG: number }) {
  const [written, setWritten] = useState<string | null>(null);
  const text = plainText(doseG);
  const inFormula = useShared($batch).formula.lines.find(({ id }) => id === lineId)?.amount.text === text;
  return (
    <p class="buttons" role="status">
      {inFormula ? (
        <span>{written === text ? say.writtenIntoTheFormula : say.thisIsWhatTheFormulaSays}</span>
      ) : (
        <button
          type="button"
          class="press-first"
          onClick={() => {
            editAt(`formula.lines.${lineId}.amount`, enteredEntry(text, 'g'));
            setWritten(text);
          }}
        >
          {say.writeThisWeightIntoTheFormula}
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
        {say.nitriteWantedWeightStrength(
          basis,
          fixedText(targetPpm, 0),
          ceilingPpm === null ? '' : say.ruleLetsMgKgSodiumNitrite(fixedText(ceilingPpm, 1, 'down')),
          ruleSet?.ingoingBasis === 'total' ? say.curingSaltPlainSaltWillStand : '',
        )}
      </p>
      {result.exactG === null ? null : <p>{say.beforeRoundingG(fixedText(result.exactG, 3))}</p>}
      {result.ok ? (
        <p>
          {say.scaleGGivesMgKgItself(
            plainText(result.doseG),
            fixedText(result.ppm, 1),
            fixedText(result.allSourcesPpm, 1),
            percentText(result.weighingErrorFraction),
          )}
        </p>
      ) : (
        <p>
          {say.noWeightIsGiven(
            result.leastG === null ? '' : say.leastScaleCanWeighG50(fixedText(result.leastG, 2)),
          )}
        </p>
      )}
      <p>{say.doseSource}</p>
    </>
  );
}

/** The rule alone, where nothing can be dosed yet. */
function DoseRule() {
  return <p>{say.nitriteWantedWeightRuleCounts(say.doseSource)}</p>;
}
