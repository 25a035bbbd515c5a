import type { ListedIngredient } from '@larderwright/calc/label';
import * as say from '#words/label/list-answers.ts';
import { FigureTable } from '../parts/figure-table.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { VerdictLine } from '../parts/verdict-line.tsx';
import { Worked } from '../parts/worked.tsx';
import { useShared } from '../state/use-shared.ts';
import { labelWorkings } from '../words/label.ts';
import type { LabelComputed } from './compute.ts';
import { $label } from './computed.ts';
import { quantityText } from './label-text.ts';

function Listed({ list }: { list: readonly ListedIngredient[] }) {
  return (
    <p class="label-list">
      {list.map(({ name, text }, index) => (
        <span key={`${name}-${index}`}>
          {index > 0 ? ', ' : ''}
          {text.map((part, place) =>
            part.allergen ? (
              <strong key={`${place}-${part.text}`}>{part.text}</strong>
            ) : (
              <span key={`${place}-${part.text}`}>{part.text}</span>
            ),
          )}
        </span>
      ))}
    </p>
  );
}

/** Allergens by class, or that none is known. */
function allergenText(list: LabelComputed['values']['euAllergens']): string {
  const words = list.map(
    ({ name, kinds, toCheck }) =>
      `${name}${kinds.length > 0 ? ` (${kinds.join(', ')})` : ''}${toCheck ? say.toBeChecked : ''}`,
  );
  return words.join('; ') || say.noneKnown;
}

/** The list in both tongues of the law, its quantities, and the allergens. */
export function ListAnswers() {
  const computed = useShared($label);
  if (computed.state !== 'ready') return null;
  const { values, findings, verdicts } = computed.value;
  const allergens = verdicts.find(({ id }) => id === 'label.allergens');
  return (
    <>
      <h3>{say.europeanUnionAndUnitedKingdom}</h3>
      <Listed list={values.eu} />
      <h3>{say.unitedStates}</h3>
      <Listed list={values.us} />
      <Worked>
        <p>{labelWorkings.list}</p>
        <FigureTable
          caption={say.asItWentIn}
          columns={[say.ingredient, say.weight, say.share]}
          rows={values.eu.map(({ name, massG, ofIngoingFraction }, index) => ({
            key: `${index}-${name}`,
            head: name,
            cells: [
              massG === null ? say.unknown : gramsText(massG),
              ofIngoingFraction === null ? '–' : percentText(ofIngoingFraction),
            ],
          }))}
        />
      </Worked>
      <h3>{say.allergens}</h3>
      {allergens ? <VerdictLine verdict={allergens} /> : null}
      <FigureTable
        words
        columns={[say.list, say.inThisFood]}
        rows={[
          { key: 'eu', head: say.euAndUkFourteen, cells: [allergenText(values.euAllergens)] },
          { key: 'us', head: say.unitedStatesNine, cells: [allergenText(values.usAllergens)] },
        ]}
      />
      <Quantities computed={computed.value} />
      <FindingList findings={at(findings, 'label.lines')} />
    </>
  );
}

function Quantities({ computed: { values } }: { computed: LabelComputed }) {
  const { quantities, meat } = values;
  return (
    <>
      <h3>{say.quantitiesWhatNameStresses}</h3>
      {quantities === null ? (
        <p class="not-yet">{say.cannotTellWeightFinishedWeight}</p>
      ) : quantities.length === 0 ? (
        <p class="say">{say.nothingMarkedStressedName}</p>
      ) : (
        <FigureTable
          columns={[say.ingredient, say.declare, say.counted, say.ofTheFinishedFood]}
          rows={quantities.map((quantity) => ({
            key: quantity.name,
            head: quantity.name,
            cells: [
              quantityText(quantity),
              gramsText(quantity.massG),
              percentText(quantity.ofFinishedFraction, 1),
            ],
          }))}
        />
      )}
      <Worked>
        <p>{labelWorkings.quantities}</p>
      </Worked>
      {meat.length > 0 ? (
        <>
          <FigureTable
            caption={say.whatCountsAsMeat}
            columns={[
              say.meat,
              say.wentIn,
              say.countsAsMeat,
              say.fatOver,
              say.tissueOver,
              say.collagenInProtein,
            ]}
            rows={meat.map(({ name, massG, content }) => ({
              key: name,
              head: name,
              cells: [
                massG === null ? say.unknown : gramsText(massG),
                content === null ? say.cannotTell : percentText(content.declarableFraction, 1),
                content === null ? '–' : percentText(content.excessFatFraction, 1),
                content === null ? '–' : percentText(content.excessTissueFraction, 1),
                content === null ? '–' : percentText(content.collagenOfProteinFraction, 1),
              ],
            }))}
          />
          <Worked>
            <p>{labelWorkings.meat}</p>
          </Worked>
        </>
      ) : null}
    </>
  );
}
