import type { ComponentChildren } from 'preact';

/** Something that unfolds on request. */
export function Fold({
  title,
  class: name = 'fold',
  children,
}: {
  readonly title: ComponentChildren;
  readonly class?: string;
  readonly children: ComponentChildren;
}) {
  return (
    <details class={name}>
      <summary>
        <span>{title}</span>
      </summary>
      <div class="fold-inside">{children}</div>
    </details>
  );
}

/** Escape closes the innermost fold around the focus and leaves the focus on its title. */
export function closeFoldOnEscape(event: KeyboardEvent): void {
  if (event.key !== 'Escape' || !(event.target instanceof Element)) return;
  const fold = event.target.closest<HTMLDetailsElement>('details[open]');
  if (!fold) return;
  fold.open = false;
  fold.querySelector('summary')?.focus();
}
