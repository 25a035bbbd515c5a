import { FIGURES } from '../../../content/figures/index.ts';
import { STAGE_GROUPS } from '../../../content/reference/stages.ts';
import { column, figureCell, type TablePart } from '../../lib/table-model.ts';

/** Temperatures by stage, from the door to the plate. */
export const temperatures: readonly TablePart[] = STAGE_GROUPS.map(({ id, title, note, stages }) => {
  const acts = stages.some(({ act }) => act !== undefined);
  return {
    id,
    title,
    notes: [note],
    sources: [...new Set(stages.flatMap(({ aim, act }) => [sourceOf(aim), ...(act ? [sourceOf(act)] : [])]))],
    columns: [column('Stage'), column('Temperature'), ...(acts ? [column('Act')] : []), column('Why')],
    rows: stages.map((stage) => ({
      id: stage.id,
      cells: [
        stage.stage,
        figureCell(stage.aim),
        ...(acts ? [stage.act ? figureCell(stage.act) : '–'] : []),
        stage.why,
      ],
      mark: FIGURES[stage.aim].mark,
    })),
  };
});

function sourceOf(id: keyof typeof FIGURES): string {
  return FIGURES[id].source ?? 'common-practice';
}
