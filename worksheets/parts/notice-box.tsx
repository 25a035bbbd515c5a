import { useContext } from 'preact/hooks';
import * as say from '#words/parts/notice-box.ts';
import { $batch, $life, $notice, type Notice } from '../state/store.ts';
import { useShared } from '../state/use-shared.ts';
import { noticeWords } from '../words/notices.ts';
import { Links } from './links.ts';

/** Troubles in which what stands on screen may be all there is. */
const AT_RISK: readonly Notice['id'][] = [
  'storage-failed',
  'storage-full',
  'storage-blocked',
  'storage-cleared',
  'batch-deleted',
];

async function saveNow(schema: string): Promise<void> {
  const { saveBatches } = await import('../state/save-file.ts');
  const batch = $batch.get();
  saveBatches([batch], [batch.product.batchNo, batch.product.name], schema);
}

/** A message about the record, with what can be done about it at once. */
export function NoticeBox() {
  const { schema } = useContext(Links);
  const notice = useShared($notice);
  const open = useShared($life) === 'open';
  if (!notice) return null;
  return (
    <div class="finding" data-severity="caution" role="alert">
      <p>{noticeWords(notice)}</p>
      {open && AT_RISK.includes(notice.id) ? (
        <p class="buttons">
          <button type="button" class="press-first" onClick={() => void saveNow(schema)}>
            {say.saveThisBatchToAFile}
          </button>
          {notice.id === 'batch-deleted' ? (
            <button
              type="button"
              onClick={() => void import('../state/keeper.ts').then(({ keepAfterAll }) => keepAfterAll())}
            >
              {say.keepItAfterAll}
            </button>
          ) : null}
        </p>
      ) : null}
    </div>
  );
}
