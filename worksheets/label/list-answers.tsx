import type { ListedIngredient } from '@larderwright/calc/label';
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
      `${name}${kinds.length > 0 ? ` (${kinds.join(', ')})` : ''}${toCheck ? ', to be checked' : ''}`,
  );
  return words.join('; ') || 'none known';
}

/** The list in both tongues of the law, its quantities, and the allergens. */
export function ListAnswers() {
  const computed = useShared($label);
  if (computed.state !== 'ready') return null;
  const { values, findings, verdicts } = computed.value;
  const allergens = verdicts.find(({ id }) => id === 'label.allergens');
  return (
    <>
      <h3>European Union and United Kingdom</h3>
      <Listed list={values.eu} />
      <h3>United States</h3>
      <Listed list={values.us} />
      <Worked>
        <p>{labelWorkings.list}</p>
        <FigureTable
          caption="As it went in"
          columns={['Ingredient', 'Weight', 'Share']}
          rows={values.eu.map(({ name, massG, ofIngoingFraction }, index) => ({
            key: `${index}-${name}`,
            head: name,
            cells: [
              massG === null ? 'unknown' : gramsText(massG),
              ofIngoingFraction === null ? '–' : percentText(ofIngoingFraction),
            ],
          }))}
        />
      </Worked>
      <h3>Allergens</h3>
      {allergens ? <VerdictLine verdict={allergens} /> : null}
      <FigureTable
        words
        columns={['List', 'In this food']}
        rows={[
          { key: 'eu', head: 'EU and UK, fourteen', cells: [allergenText(values.euAllergens)] },
          { key: 'us', head: 'United States, nine', cells: [allergenText(values.usAllergens)] },
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
      <h3>Quantities of what the name stresses</h3>
      {quantities === null ? (
        <p class="not-yet">Cannot tell: a weight, or the finished weight, is missing</p>
      ) : quantities.length === 0 ? (
        <p class="say">Nothing is marked as stressed by the name.</p>
      ) : (
        <FigureTable
          columns={['Ingredient', 'Declare', 'Counted', 'Of the finished food']}
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
            caption="What counts as meat"
            columns={['Meat', 'Went in', 'Counts as meat', 'Fat over', 'Tissue over', 'Collagen in protein']}
            rows={meat.map(({ name, massG, content }) => ({
              key: name,
              head: name,
              cells: [
                massG === null ? 'unknown' : gramsText(massG),
                content === null ? 'CANNOT TELL' : percentText(content.declarableFraction, 1),
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
