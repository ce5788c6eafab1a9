import type { HoursFigure } from '../../src/core/dialogue/outlook-view/types.ts';
import { outlookWords } from '../words.ts';
import { Figure } from './figure.tsx';
import { scale } from './geometry.ts';
import { hourCells, hoursPlot } from './hour-cells.ts';

const states = ['clear', 'clear-if', 'blocked', 'beyond-forecast'] as const;

/** Windows along the hours: a row a day, from midnight to midnight. */
export function HoursChart({ view }: { readonly view: HoursFigure }) {
  const longest = Math.max(24, ...view.rows.map(({ hours }) => hours));
  const x = scale([0, longest], [hoursPlot.left, hoursPlot.right]);
  const foot = hoursPlot.top + view.rows.length * hoursPlot.row;
  return (
    <Figure name="hours" view={view} height={foot + 6} legend={<Legend view={view} />}>
      <g class="fig-words">
        {[0, 6, 12, 18, 24].map((hour) => (
          <text
            key={hour}
            x={x(hour)}
            y={hoursPlot.top - 5}
            text-anchor={hour === 0 ? 'start' : hour === 24 ? 'end' : 'middle'}
          >
            {hour}
          </text>
        ))}
        {view.rows.map(({ label }, row) => (
          <text key={label} x={hoursPlot.left - 6} y={hoursPlot.top + row * hoursPlot.row + 13} text-anchor="end">
            {label}
          </text>
        ))}
      </g>
      {hourCells(view).map(({ key, state, ...cell }) => (
        <rect key={key} class={`fig-cell is-${state}`} {...cell} />
      ))}
      <g class="fig-grid">
        {[6, 12, 18].map((hour) => (
          <path key={hour} d={`M${x(hour)} ${hoursPlot.top}V${foot}`} />
        ))}
      </g>
    </Figure>
  );
}

function Legend({ view }: { readonly view: HoursFigure }) {
  const shown = states.filter((state) => view.rows.some(({ runs }) => runs.some((run) => run.state === state)));
  return (
    <ul class="fig-legend">
      {shown.map((state) => (
        <li key={state}>
          <svg viewBox="0 0 24 16" aria-hidden="true" focusable="false">
            <rect class={`fig-cell is-${state}`} x="1" y="1" width="22" height="14" />
          </svg>
          {outlookWords.states[state]}
        </li>
      ))}
    </ul>
  );
}
