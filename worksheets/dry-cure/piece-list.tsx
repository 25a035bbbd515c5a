import type { DryCurePiece } from '@larderwright/calc/dry-cure';
import { Fragment } from 'preact';
import { RemovedRowLine } from '../parts/row-tools.tsx';
import { useAt, useShared } from '../state/use-shared.ts';
import { $dryCure } from './computed.ts';
import { PieceSection } from './piece-section.tsx';

const LIST = 'dryCure.pieces';

/** Every piece with a bag of its own. */
export function PieceList() {
  const pieces = useAt(LIST) as readonly DryCurePiece[];
  const computed = useShared($dryCure);
  const ready = computed.state === 'ready' ? computed.value : null;
  return (
    <>
      {pieces.map((piece, place) => (
        <Fragment key={piece.id}>
          <RemovedRowLine list={LIST} place={place} />
          <PieceSection piece={piece} place={place} last={place === pieces.length - 1} computed={ready} />
        </Fragment>
      ))}
      <RemovedRowLine list={LIST} place={pieces.length} />
    </>
  );
}
