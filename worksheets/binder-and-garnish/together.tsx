import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { Needed } from '../parts/needed.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { WriteOwnLines } from '../parts/write-own-lines.tsx';
import { useShared } from '../state/use-shared.ts';
import { binderFigureNames, binderWorkings } from '../words/binder.ts';
import { $binder } from './computed.ts';
import { binderFieldName } from './field-names.ts';
import { BINDER_LINE } from './to-formula.ts';

const CARRIED = (
  <p>
    {binderWorkings.carried} Composition by the table, each row with its source on the batch formula; the rest
    is derived.
  </p>
);

/** Salt, water and allergens brought in, the shares, and the way into the formula. */
export function Together() {
  return (
    <Computed of={useShared($binder)}>
      {({ slice, values, findings, missing, lines }) => {
        const { carried, garnishFraction, eggFraction, garnish } = values;
        return (
          <>
            <Needed
              missing={missing}
              figures={binderFigureNames}
              nameOf={(path) => binderFieldName(path, slice)}
            />
            <div class="answers">
              <Answer
                label="Salt they bring"
                value={carried.saltG === null ? null : gramsText(carried.saltG)}
                missing="Cannot tell: a weight or the salt of something is not known"
                worked={CARRIED}
              />
              <Answer
                label="Water they bring"
                value={carried.waterG === null ? null : gramsText(carried.waterG)}
                missing="Cannot tell: a weight or the water of something is not known"
                worked={CARRIED}
              />
              {garnish.length === 0 ? null : (
                <Answer
                  label="All garnish, of the whole mix"
                  value={garnishFraction === null ? null : percentText(garnishFraction, 1)}
                  worked={
                    <p>
                      Garnish ready to fold in, divided by everything in the bowl, these lines among it.
                      Derived.
                    </p>
                  }
                />
              )}
              {values.eggG ? (
                <Answer
                  label="Egg, of the whole mix"
                  value={eggFraction === null ? null : percentText(eggFraction, 1)}
                  worked={<p>Egg divided by everything in the bowl. Derived.</p>}
                />
              ) : null}
            </div>
            <FindingList
              findings={[...at(findings, 'binder.garnish'), ...at(findings, 'binder.panadeParts')]}
            />
            <WriteOwnLines
              lines={lines}
              prefix={BINDER_LINE}
              label="Write these lines into the formula"
              hint="Lines this page wrote before are replaced; others stay: take out those that are the same. Panade goes in as it weighs cooked: its steam is taken off its largest part."
              done="Binders and garnish stand in the formula."
            />
          </>
        );
      }}
    </Computed>
  );
}
