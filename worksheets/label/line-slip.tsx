import type { Finding } from '@larderwright/calc/findings';
import type { LabelLine } from '@larderwright/calc/label';
import { type LabelPart, PUBLISHED_COLLAGEN } from '@larderwright/calc/label';
import * as phrases from '#words/label/line-slip.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { TextBox } from '../parts/text-box.tsx';
import { useAt } from '../state/use-shared.ts';
import { AllergenTicks } from './allergen-ticks.tsx';
import { FigureBoxes } from './figure-boxes.tsx';
import { saidOf, sayOfLine } from './line-said.ts';

const YES_NO = [
  { value: 'no', label: phrases.no },
  { value: 'yes', label: phrases.yesItsQuantityIsDeclared },
];

interface LineSlipProps {
  part: LabelPart;
  findings: readonly Finding[];
}

/** One line of the formula: how the label names it, what it is made of, its allergens and, for meat, its collagen. */
export function LineSlip({ part, findings }: LineSlipProps) {
  const said = saidOf(useAt('label.lines') as readonly LabelLine[], part.id);
  const name = part.ownName || phrases.thisIngredient;
  const say = (change: Partial<LabelLine>) => sayOfLine(part.id, change);
  const isCure = part.line?.part === 'curing-salt';
  return (
    <li class="label-slip">
      <div class="label-slip-head">
        <strong>{name}</strong>
        <span>{part.massG === null ? phrases.weightUnknown : gramsText(part.massG)}</span>
        <span class="label-slip-name">
          {phrases.inTheList(isCure ? phrases.asItsSaltAndItsPreservatives : part.name || phrases.noName)}
        </span>
      </div>
      <FindingList findings={at(findings, part.path)} />
      <details class="label-more">
        <summary>{phrases.whatTheLabelSaysOf(name)}</summary>
        <div class="fields">
          {isCure ? null : (
            <TextBox
              label={phrases.nameOfInTheList(name)}
              text={said.name}
              onText={(text) => say({ name: text })}
              hint={phrases.blank(part.proposed || phrases.itsOwnName)}
            />
          )}
          <ChoiceField
            label={phrases.doesTheNameOfTheFood(name)}
            value={said.stressed ? 'yes' : 'no'}
            choices={YES_NO}
            onChoose={(value) => say({ stressed: value === 'yes' })}
            hint={phrases.inTheNameInWordsOr}
          />
          {part.needsMadeOf || said.madeOf !== '' ? (
            <TextBox
              label={phrases.isMadeOf(name)}
              text={said.madeOf}
              onText={(text) => say({ madeOf: text })}
              hint={phrases.orderPackAdditivesClassName}
            />
          ) : null}
        </div>
        {part.meatClass === null ? null : (
          <div class="fields">
            <NumberBox
              label={phrases.collagenOf(name)}
              kind="fraction"
              units={['%']}
              entry={said.collagen}
              onEntry={(collagen) => say({ collagen })}
              hint={phrases.perCentMeatAnalysis}
            />
            <ChoiceField
              label={phrases.orAPublishedCutFor(name)}
              value={said.collagenCut ?? ''}
              empty={phrases.noneCollagenIsNotKnown}
              choices={PUBLISHED_COLLAGEN.filter(({ meatClass }) => meatClass === part.meatClass).map(
                (cut) => ({
                  value: cut.id,
                  label: `${cut.name}: ${percentText(cut.fraction)}${cut.of === 'fat-free' ? phrases.ofTheFatFreeMeat : ''}`,
                }),
              )}
              onChoose={(id) => say({ collagenCut: id || null })}
              hint={phrases.animalsDifferAnalysisOutranks}
            />
          </div>
        )}
        {isCure || part.line?.part === 'salt' ? null : (
          <>
            <AllergenTicks
              name={name}
              ticked={said.allergens}
              onTick={(allergens) => say({ allergens })}
              unread={part.row ? phrases.asTheCompositionTableSays : phrases.nobodyHasReadThePack}
            />
            <details class="label-more">
              <summary>{phrases.nutritionOfByItsPack(name)}</summary>
              <FigureBoxes name={name} figures={said.figures} onFigures={(figures) => say({ figures })} />
            </details>
          </>
        )}
      </details>
    </li>
  );
}
