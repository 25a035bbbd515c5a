import type { DryCurePiece } from '@larderwright/calc/dry-cure';
import { rangeIn, type Unit } from '@larderwright/calc/quantities';
import * as say from '#words/dry-cure/piece-section.ts';
import { at } from '../parts/finding-list.tsx';
import { NotYet } from '../parts/not-yet.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { RowTools } from '../parts/row-tools.tsx';
import { TextField } from '../parts/text-field.tsx';
import type { DryCureComputed } from './compute.ts';
import { PieceAnswers } from './piece-answers.tsx';

const MASSES: readonly Unit[] = ['g', 'kg', 'lb', 'oz'];
/** No whole muscle is thicker than half a metre. */
const THICKNESS = rangeIn('mm', 0, 500);

interface PieceSectionProps {
  piece: DryCurePiece;
  place: number;
  last: boolean;
  computed: DryCureComputed | null;
}

/** One piece: its weight and thickness, what goes in its bag, what went in, what became of it. */
export function PieceSection({ piece, place, last, computed }: PieceSectionProps) {
  const path = `dryCure.pieces.${piece.id}`;
  const name = piece.name || say.piece(place + 1);
  const findings = computed?.findings ?? [];
  const values = computed?.values.pieces.find(({ id }) => id === piece.id) ?? null;
  const number = (key: keyof DryCurePiece, label: string, hint?: string) => (
    <NumberField
      path={`${path}.${key}`}
      label={label}
      kind="mass"
      units={MASSES}
      hint={hint}
      findings={at(findings, `${path}.${key}`)}
    />
  );
  return (
    <section class="mould" aria-label={name}>
      <div class="mould-head">
        <h3>{name}</h3>
        <RowTools list="dryCure.pieces" id={piece.id} label={name} first={place === 0} last={last} />
      </div>
      <div class="fields">
        <TextField path={`${path}.name`} label={say.nameOfThePiece} />
        {number('skinOff', say.weightWithoutSkin)}
        {number('skinOn', say.weightWithItsSkin, say.onlyWhereSkinStaysTenthTaken)}
        <NumberField
          path={`${path}.thickness`}
          label={say.thickestPlace}
          kind="length"
          units={['mm', 'cm', 'in']}
          range={THICKNESS}
          findings={at(findings, `${path}.thickness`)}
        />
      </div>
      {values && computed ? <PieceAnswers values={values} computed={computed} /> : <NotYet />}
      <h4>{say.onTheScale}</h4>
      <div class="fields">
        <NumberField
          path={`${path}.curingSaltActual`}
          label={say.curingSaltAsWeighed}
          kind="mass"
          gramsOnly
          findings={at(findings, `${path}.curingSaltActual`)}
        />
        {number('saltActual', say.plainSaltAsWeighed)}
        {number('sugarActual', say.sugarAsWeighed)}
        {number('now', say.weightOfThePieceNow, say.onALaterDayForIts)}
      </div>
    </section>
  );
}
