/** Patterns that the figures are filled with: told apart without colour, in print and in forced colours. */
export function Patterns() {
  return (
    <svg class="fig-patterns" width="0" height="0" aria-hidden="true" focusable="false">
      <defs>
        <pattern id="fig-clear" width="6" height="4" patternUnits="userSpaceOnUse">
          <rect class="fig-bright" width="6" height="4" />
          <path class="fig-bright-ink" d="M0 2H6" />
        </pattern>
        <pattern id="fig-clear-if" width="5" height="5" patternUnits="userSpaceOnUse">
          <rect class="fig-sheet" width="5" height="5" />
          <circle class="fig-dot" cx="2.5" cy="2.5" r="1" />
        </pattern>
        <pattern id="fig-blocked" width="5" height="5" patternUnits="userSpaceOnUse">
          <rect class="fig-earth" width="5" height="5" />
          <path class="fig-earth-ink" d="M0 5 5 0" />
        </pattern>
        <pattern id="fig-water" width="8" height="6" patternUnits="userSpaceOnUse">
          <rect class="fig-sheet" width="8" height="6" />
          <path class="fig-thin" d="M0 3Q2 0 4 3T8 3" />
        </pattern>
        <pattern id="fig-beyond" width="6" height="6" patternUnits="userSpaceOnUse">
          <path class="fig-thin" d="M0 6 6 0" />
        </pattern>
      </defs>
    </svg>
  );
}
