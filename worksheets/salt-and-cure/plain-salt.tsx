import type { PlainSaltNeed } from '@larderwright/calc/formula';
import { enteredEntry, fixedText, plainText, roundTo } from '@larderwright/calc/quantities';
import * as say from '#words/salt-and-cure/plain-salt.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { SaltSources } from '../parts/salt-sources.tsx';
import { addFormulaLine } from '../state/lines.ts';
import { $batch, editAt } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { formulaWorkings } from '../words/formula.ts';
import type { CureComputed } from './compute.ts';
import { $cure } from './computed.ts';

/** Plain salt left to add, and the reckoning of all salt. */
export function PlainSalt() {
  return (
    <Computed of={useShared($cure)}>
      {(computed) =>
        computed.isReckonedElsewhere ? (
          <p class="say">{say.reckonedElsewhere}</p>
        ) : (
          <>
            <Need computed={computed} />
            <SaltSources salt={computed.formula.mix.salt} totalG={computed.formula.mix.totalG} />
          </>
        )
      }
    </Computed>
  );
}

const CANNOT: Readonly<Record<Extract<PlainSaltNeed, { state: 'cannot-tell' }>['because'], string>> = {
  target: 'Cannot tell: write the salt wanted',
  mass: say.cannotTellAWeightIsMissing,
  salt: say.cannotTellSaltIngredientNot,
};

function missingText(plain: PlainSaltNeed): string {
  if (plain.state === 'cannot-tell') return CANNOT[plain.because];
  if (plain.state === 'over-supplied') {
    const { carriedFraction, excessG, overSupplier } = plain;
    return say.noneNoneCanHelpIngredients(
      percentText(carriedFraction, 2),
      fixedText(excessG, 1),
      overSupplier.name || say.anUnnamedLine,
    );
  }
  return '';
}

function Need({ computed: { cure } }: { computed: CureComputed }) {
  const { plain, plainListedG, targetFraction } = cure.salt;
  const wanted = plain.state === 'ok' ? plain : null;
  return (
    <Answer
      label={say.plainSaltInAll}
      value={wanted ? gramsText(wanted.plainSaltG) : null}
      missing={missingText(plain)}
      worked={
        wanted && targetFraction !== null ? (
          <p>
            {say.finalGSaltOtherLinesBring(
              percentText(targetFraction, 2),
              gramsText(wanted.totalG),
              fixedText(targetFraction * wanted.totalG, 1),
              fixedText(wanted.carriedSaltG, 1),
              formulaWorkings.plainSalt,
            )}
          </p>
        ) : (
          <p>{say.derivedMassBalance(formulaWorkings.plainSalt)}</p>
        )
      }
    >
      {wanted ? <WriteSalt saltG={wanted.plainSaltG} listedG={plainListedG} /> : null}
    </Answer>
  );
}

/** Puts the plain salt into the formula, where one line can take it. */
function WriteSalt({ saltG, listedG }: { saltG: number; listedG: number | null }) {
  const lines = useShared($batch).formula.lines.filter(({ part }) => part === 'salt');
  const [line, another] = lines;
  const text = plainText(roundTo(saltG, saltG < 10 ? 2 : 1));
  if (another) return <p class="say">{say.formulaHasSaltLinesShareOut(lines.length)}</p>;
  const isListed = listedG !== null && Math.abs(listedG - saltG) < 0.06;
  return (
    <p class="buttons" role="status">
      {isListed ? (
        <span>{say.thisIsWhatTheFormulaSays}</span>
      ) : (
        <>
          {listedG === null || listedG === 0 ? null : <span>{say.theFormulaSays(gramsText(listedG))}</span>}
          <button
            type="button"
            onClick={() => {
              const id = line?.id ?? addFormulaLine('salt');
              editAt(`formula.lines.${id}.basis`, 'mass');
              editAt(`formula.lines.${id}.amount`, enteredEntry(text, 'g'));
            }}
          >
            {say.writeThisSaltIntoTheFormula}
          </button>
        </>
      )}
    </p>
  );
}
