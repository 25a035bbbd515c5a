/** Rows to write readings in by hand: on paper only, and only while there are none. */
import * as say from '#words/readings/pencil-rows.ts';
export function PencilRows({ rows = 12 }: { rows?: number }) {
  return (
    <table class="pencil-rows">
      <caption>{say.readingsByHand}</caption>
      <thead>
        <tr>
          <th scope="col">{say.time}</th>
          <th scope="col">{say.coreC}</th>
          <th scope="col">{say.initials}</th>
          <th scope="col">{say.remarks}</th>
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: rows }, (_, i) => (
          <tr key={i}>
            <td />
            <td />
            <td />
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  );
}
