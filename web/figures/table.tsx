import type { TableView } from '../../src/core/dialogue/outlook-view/types.ts';

/** The numbers behind a figure; where they are wider than the screen they scroll by themselves, by the keyboard too. */
export function Table({ title, table }: { readonly title: string; readonly table: TableView }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for forms
    <div class="table" role="group" aria-label={title} tabIndex={0}>
      <table>
        <thead>
          <tr>
            {table.columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map(([day, ...cells]) => (
            <tr key={day}>
              <th scope="row">{day}</th>
              {cells.map((cell, index) => (
                <td key={table.columns[index + 1]}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
