/** Prints a table of figures under a title, so that a test run shows what it measured. */
export function printTable(
  title: string,
  head: readonly string[],
  rows: readonly (readonly (string | number)[])[],
): void {
  const cells = [head, ...rows].map((row) => row.map(String));
  const widths = head.map((_, column) => Math.max(...cells.map((row) => (row[column] ?? '').length)));
  const lines = cells.map((row) => row.map((cell, column) => cell.padStart(widths[column] ?? 0)).join('  '));
  process.stdout.write(`\n${title}\n${lines.map((line) => `  ${line}\n`).join('')}`);
}
