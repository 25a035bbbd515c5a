interface BlankFormProps {
  caption: string;
  columns: readonly string[];
  rows: number;
}

/** Ruled lines to write on: shown on paper, and where no script runs. */
export function BlankForm({ caption, columns, rows }: BlankFormProps) {
  return (
    <table class="blank-form">
      <caption>{caption}</caption>
      <thead>
        <tr>
          {columns.map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: rows }, (_, row) => (
          <tr key={row}>
            {columns.map((column) => (
              <td key={column} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
