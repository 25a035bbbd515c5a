/** Rows to write readings in by hand: on paper only, and only while there are none. */
export function PencilRows({ rows = 12 }: { rows?: number }) {
  return (
    <table class="pencil-rows">
      <caption>Readings, by hand</caption>
      <thead>
        <tr>
          <th scope="col">Time</th>
          <th scope="col">Core °C</th>
          <th scope="col">Initials</th>
          <th scope="col">Remarks</th>
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
