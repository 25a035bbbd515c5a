import type { Mix, MixComponent } from '@larderwright/calc/formula';
import { fixedText } from '@larderwright/calc/quantities';
import { Answer } from '../parts/answer.tsx';
import { CompositionBar } from '../parts/composition-bar.tsx';
import { Computed } from '../parts/computed.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { $formula } from './computed.ts';
import { ContributionTable } from './contribution-table.tsx';
import { sharesOf } from './shares.ts';

/** A share that is known, or between what it must lie. */
function shareText({ fraction, minFraction, maxFraction }: MixComponent): string | null {
  if (fraction !== null) return percentText(fraction);
  if (minFraction === null || maxFraction === null) return null;
  return null;
}

/** Why a share cannot be told, with its bounds where there are any. */
function missingText({ minFraction, maxFraction }: MixComponent): string {
  if (minFraction === null || maxFraction === null) return 'Cannot tell: a weight is missing';
  return `Cannot tell: between ${percentText(minFraction)} and ${percentText(maxFraction)}, by what the unknown lines hold`;
}

/** What the mix weighs and is made of. */
export function Composition() {
  return (
    <Computed of={useShared($formula)}>
      {({ values: { mix, inUse }, findings }) => (
        <>
          <FindingList findings={at(findings, 'formula.lines')} />
          {inUse === 'as-weighed' ? (
            <p class="say">Weights as the scale showed them; the plan stands in for lines not weighed yet.</p>
          ) : null}
          <MixFigures mix={mix} />
        </>
      )}
    </Computed>
  );
}

function MixFigures({ mix }: { mix: Mix }) {
  const shares = sharesOf(mix);
  const component = (label: string, of: MixComponent) => (
    <Answer
      label={label}
      value={shareText(of)}
      missing={missingText(of)}
      worked={<ContributionTable of={label} contributions={of.contributions} />}
    />
  );
  return (
    <>
      <div class="answers">
        <Answer
          label="Everything in the bowl"
          value={mix.totalG === null ? null : gramsText(mix.totalG)}
          missing="Cannot tell: a weight is missing"
          worked={<p>All lines added up. A lining goes round the mix and is left out.</p>}
        />
        <Answer
          label="Meat block"
          value={mix.meatBlockG === null ? null : gramsText(mix.meatBlockG)}
          missing="Cannot tell: a weight is missing"
          worked={<p>Lean, fat, liver and offal added up; no panade, egg, liquid or garnish.</p>}
        />
      </div>
      <div class="makes">
        {shares ? (
          <CompositionBar
            shares={shares}
            caption={
              shares.some(({ of }) => of === 'unknown')
                ? 'What the mix is made of, as far as it is known'
                : 'What the mix is made of'
            }
          />
        ) : null}
        <div class="answers">
          {component('Fat', mix.fat)}
          {component('Protein', mix.protein)}
          {component('Water', mix.water)}
          {mix.waterToProtein === null ? null : (
            <Answer label="Water to protein" value={`${fixedText(mix.waterToProtein, 2)} : 1`} />
          )}
          {mix.fatToProtein === null ? null : (
            <Answer label="Fat to protein" value={`${fixedText(mix.fatToProtein, 2)} : 1`} />
          )}
        </div>
      </div>
    </>
  );
}
