import { CHIMNEY_MM, type PasteWeights } from '@larderwright/calc/mould';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { Needed } from '../parts/needed.tsx';
import { gramsText, litresText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { crustFigureNames, crustWorkings } from '../words/crust.ts';
import { crustFieldName, PASTE_PART_NAMES } from '../words/crust-names.ts';
import { $crust } from './computed.ts';
import { caulText, chimneysText, partText, placesText, sheetText } from './figure-text.ts';

const HABIT = 'Common practice, no source.';
const NO_SHEET = 'Cannot tell: the mould, a measure or the overlap is missing';

/** Sheets to cut and what the pastry weighs. */
export function Sheets() {
  return (
    <Computed of={useShared($crust)}>
      {({ values, missing }) => {
        const { sheets, pastry, pastryTotalG, cavityMl, cavityTotalMl } = values;
        const places = placesText(values);
        return (
          <>
            <div class="answers">
              <Answer
                label={sheets?.wall ? 'Base' : 'Base and walls, in one'}
                value={sheets && sheetText(sheets.base)}
                missing={NO_SHEET}
                worked={
                  <p>
                    {sheets?.wall ? 'The plan of the mould.' : crustWorkings.base} {HABIT}
                  </p>
                }
              />
              {sheets?.wall ? (
                <Answer
                  label="Strip for the wall"
                  value={sheetText(sheets.wall)}
                  worked={
                    <p>
                      Way round and one overlap, by depth and two overlaps. Way round an oval: Ramanujan’s
                      first formula of 1914, from memory. {HABIT}
                    </p>
                  }
                />
              ) : null}
              <Answer
                label="Lid"
                value={sheets && sheetText(sheets.lid)}
                missing={NO_SHEET}
                worked={
                  <p>
                    {crustWorkings.lid} {HABIT}
                  </p>
                }
              />
              <Answer
                label="Pastry for one"
                value={pastry && gramsText(pastry.withSpareG)}
                missing="Cannot tell: see what is still needed below"
                worked={
                  <p>
                    {crustWorkings.mass}
                    {pastry ? ` Sheets alone: ${gramsText(pastry.sheetsG)}.` : ''} Derived; density and spare
                    are common practice, no source.
                  </p>
                }
              />
              <Answer
                label="Pastry for all"
                value={pastryTotalG === null ? null : gramsText(pastryTotalG)}
                missing="Cannot tell: the pastry of one or how many is missing"
                worked={<p>Pastry for one × how many. Derived.</p>}
              />
              <Answer
                label="Chimneys"
                value={chimneysText(values)}
                missing="Cannot tell: the length of the mould is missing"
                worked={
                  <p>
                    {crustWorkings.chimneys} {HABIT}
                  </p>
                }
              >
                {places === null ? null : (
                  <p>
                    {places}. Holes of {CHIMNEY_MM.holeMin} to {CHIMNEY_MM.holeMax} mm, funnels{' '}
                    {CHIMNEY_MM.funnelMin} to {CHIMNEY_MM.funnelMax} mm tall.
                  </p>
                )}
              </Answer>
              <Answer
                label="Room inside one crust"
                value={cavityMl === null ? null : litresText(cavityMl)}
                missing="Cannot tell: a measure or the thickness is missing, or no room is left"
                worked={<p>{crustWorkings.cavity} Derived. A little too large where the lid is thicker.</p>}
              >
                {cavityTotalMl === null ? null : <p>{litresText(cavityTotalMl)} in all of them</p>}
              </Answer>
            </div>
            <Needed missing={missing} figures={crustFigureNames} nameOf={crustFieldName} />
          </>
        );
      }}
    </Computed>
  );
}

/** Grams of the paste, for all pies. */
export function PasteTable() {
  return (
    <Computed of={useShared($crust)}>
      {({ slice, values: { paste, saltG } }) =>
        paste === null ? (
          <div class="answers">
            <Answer
              label="Salt in the pastry"
              value={saltG === null ? null : gramsText(saltG)}
              missing={
                slice.pasteId === null
                  ? 'Cannot tell: the pastry or the salt of your own paste is missing'
                  : 'Cannot tell: the pastry for all is missing'
              }
              worked={<p>Pastry for all × its salt. Derived.</p>}
            />
          </div>
        ) : (
          <FigureTable
            caption="Paste for all, by parts to 100 of flour; the middle of each part (common practice, no source)"
            columns={['What', 'Weigh', 'To 100 of flour']}
            rows={(Object.keys(PASTE_PART_NAMES) as (keyof PasteWeights)[])
              .filter((part) => paste[part] > 0)
              .map((part) => ({
                key: part,
                head: PASTE_PART_NAMES[part],
                cells: [gramsText(paste[part]), partText(paste, part)],
              }))}
          />
        )
      }
    </Computed>
  );
}

/** Slices and caul for one mould. */
export function LiningAnswers() {
  return (
    <Computed of={useShared($crust)}>
      {({ values }) => {
        const { lining } = values;
        const sliced = lining?.sliced ?? null;
        return (
          <div class="answers">
            <Answer
              label="Slices for each mould"
              value={lining?.slices == null ? null : `${lining.slices}`}
              missing="Cannot tell: the mould or the width of a slice is missing"
              worked={<p>{crustWorkings.slices} Derived.</p>}
            >
              {sliced === null ? null : (
                <p>
                  {gramsText(sliced.massG)};{' '}
                  {sliced.saltG === null ? 'their salt is unknown' : `${gramsText(sliced.saltG)} of salt`}
                </p>
              )}
            </Answer>
            <Answer
              label="Or caul for each mould"
              value={caulText(values)}
              missing="Cannot tell: a measure of the mould is missing"
              worked={
                <p>
                  {crustWorkings.caul} {HABIT}
                </p>
              }
            />
          </div>
        );
      }}
    </Computed>
  );
}
