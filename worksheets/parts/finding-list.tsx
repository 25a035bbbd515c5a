import type { Finding } from '@larderwright/calc/findings';
import { FindingLine } from './finding-line.tsx';

/** The findings that belong to one field. */
export function at(findings: readonly Finding[], field: string): readonly Finding[] {
  return findings.filter((finding) => finding.field === field);
}

/** The findings of a row and of the fields in it. */
export function within(findings: readonly Finding[], path: string): readonly Finding[] {
  return findings.filter(({ field }) => field === path || field?.startsWith(`${path}.`));
}

/** Findings that no field on the page shows: heaviest first. */
export function FindingList({ findings }: { findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  const order = ['stop', 'caution', 'note'];
  const sorted = findings.toSorted((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
  return (
    <div class="finding-list">
      {sorted.map((finding, index) => (
        <FindingLine key={`${finding.id}-${index}`} finding={finding} />
      ))}
    </div>
  );
}
