import type { MissingInput } from '@larderwright/calc/findings';
import type { LinedMix, Mix, MixComponent } from '@larderwright/calc/formula';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/batch-formula/composition.ts';
import { Answer } from '../parts/answer.tsx';
import { CompositionBar } from '../parts/composition-bar.tsx';
import { Computed } from '../parts/computed.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { formulaFigureNames, formulaWorkings } from '../words/formula.ts';
import { $formula } from './computed.ts';
import { ContributionTable } from './contribution-table.tsx';
import { sharesOf } from './shares.ts';

/** Why a share cannot be told, with its bounds where there are any. */
function missingText({ minFraction, maxFraction }: MixComponent): string {
  if (minFraction === null || maxFraction === null) return say.cannotTellAWeightIsMissing;
  return say.cannotTellBetweenWhatUnknown(percentText(minFraction), percentText(maxFraction));
}

/** What the mix weighs and is made of. */
export function Composition() {
  return (
    <Computed of={useShared($formula)}>
      {({ values: { mix, lined, inUse }, findings, missing }) => (
        <>
          <Needed missing={missing} mix={mix} />
          <FindingList findings={at(findings, 'formula.lines')} />
          {inUse === 'as-weighed' ? <p class="say">{say.weightsScaleShowedPlanStands}</p> : null}
          <MixFigures mix={mix} />
          {lined === null ? null : <LinedFigures mix={mix} lined={lined} />}
        </>
      )}
    </Computed>
  );
}

/** Weights that stand in the way of a total, by the names of their lines. */
function Needed({ missing, mix }: { missing: readonly MissingInput[]; mix: Mix }) {
  const figures = ['formula.total', 'formula.meat-block'];
  const nameOf = (field: string) =>
    mix.lines.find(({ lineId }) => field.startsWith(`formula.lines.${lineId}.`))?.name || say.anUnnamedLine;
  return (
    <>
      {figures.map((figure) => {
        const fields = missing.filter(
          ({ field, neededFor }) => neededFor === figure && field !== 'formula.lines',
        );
        return fields.length === 0 ? null : (
          <p key={figure} class="say">
            {say.stillNeededForTheWeightOf(
              formulaFigureNames[figure],
              [...new Set(fields.map(({ field }) => nameOf(field)))].join(', '),
            )}
          </p>
        );
      })}
    </>
  );
}

function MixFigures({ mix }: { mix: Mix }) {
  const shares = sharesOf(mix);
  const component = (label: string, name: 'fat' | 'protein' | 'water') => (
    <Answer
      label={label}
      value={mix[name].fraction === null ? null : percentText(mix[name].fraction)}
      missing={missingText(mix[name])}
      worked={
        <>
          <p>{formulaWorkings[name]}</p>
          <ContributionTable of={label} contributions={mix[name].contributions} />
        </>
      }
    />
  );
  return (
    <>
      <div class="answers">
        <Answer
          label={say.everythingInTheBowl}
          value={mix.totalG === null ? null : gramsText(mix.totalG)}
          missing={say.cannotTellAWeightIsMissing}
          worked={<p>{formulaWorkings.total}</p>}
        />
        <Answer
          label={say.meatBlock}
          value={mix.meatBlockG === null ? null : gramsText(mix.meatBlockG)}
          missing={say.cannotTellAWeightIsMissing}
          worked={<p>{formulaWorkings.meatBlock}</p>}
        />
      </div>
      <div class="makes">
        {shares ? (
          <CompositionBar
            shares={shares}
            caption={
              shares.some(({ of }) => of === 'unknown') ? say.whatMixMadeFarKnown : say.whatTheMixIsMadeOf
            }
          />
        ) : null}
        <div class="answers">
          {component(say.fat, 'fat')}
          {component(say.protein, 'protein')}
          {component(say.water, 'water')}
          {mix.waterToProtein === null ? null : (
            <Answer
              label={say.waterToProtein}
              value={`${fixedText(mix.waterToProtein, 2)} : 1`}
              worked={<p>{formulaWorkings.ratio}</p>}
            />
          )}
          {mix.fatToProtein === null ? null : (
            <Answer
              label={say.fatToProtein}
              value={`${fixedText(mix.fatToProtein, 2)} : 1`}
              worked={<p>{formulaWorkings.ratio}</p>}
            />
          )}
        </div>
      </div>
    </>
  );
}

/** The mix with what lines its moulds, as it is sliced. */
function LinedFigures({ mix, lined }: { mix: Mix; lined: LinedMix }) {
  const inBowl = new Set(mix.salt.contributions.map(({ lineId }) => lineId));
  const worked = (label: string, name: 'fat' | 'salt') => (
    <>
      <p>{formulaWorkings.lined}</p>
      <ContributionTable
        of={label}
        contributions={lined[name].contributions.filter(({ lineId }) => !inBowl.has(lineId))}
      />
    </>
  );
  return (
    <>
      <h3>{say.withItsLining}</h3>
      <div class="answers">
        <Answer
          label={say.mixAndLining}
          value={lined.totalG === null ? null : gramsText(lined.totalG)}
          missing={say.cannotTellAWeightIsMissing}
          worked={<p>{formulaWorkings.linedTotal}</p>}
        />
        <Answer
          label={say.fatAsSliced}
          value={lined.fat.fraction === null ? null : percentText(lined.fat.fraction)}
          missing={missingText(lined.fat)}
          worked={worked(say.fat, 'fat')}
        />
        <Answer
          label={say.saltAsSliced}
          value={lined.salt.fraction === null ? null : percentText(lined.salt.fraction, 2)}
          missing={missingText(lined.salt)}
          worked={worked(say.salt, 'salt')}
        />
      </div>
    </>
  );
}
