import type { Finding, Severity } from '@larderwright/calc/findings';
import { useContext } from 'preact/hooks';
import * as say from '#words/parts/finding-line.ts';
import { wordsOf } from '../words/index.ts';
import { Links } from './links.ts';

/** The word that carries the severity; colour only supports it. */
const SEVERITY_WORD: Record<Severity, string> = { stop: say.stop, caution: say.caution, note: say.note };

/** A finding in words, with the way to the caution that explains it. */
export function FindingLine({ finding }: { finding: Finding }) {
  const links = useContext(Links);
  const { title, body } = wordsOf(finding.id, finding.params);
  const url = finding.caution ? links.cautions[finding.caution] : undefined;
  return (
    <div class="finding" data-severity={finding.severity}>
      <p>
        <strong class="finding-word">{SEVERITY_WORD[finding.severity]}</strong> {title}
        {body ? <span class="finding-body"> {body}</span> : null}
        {url ? (
          <>
            {' '}
            <a href={url}>{say.why}</a>
          </>
        ) : null}
      </p>
    </div>
  );
}
