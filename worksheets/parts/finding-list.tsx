import type { Finding } from '@larderwright/calc/findings';
import { FindingLine } from './finding-line.tsx';

/** The findings that belong to one field. */
export function at(findings: readonly Finding[], field: string): readonly Finding[] {
  return findings.filter((finding) => finding.field === field);
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
