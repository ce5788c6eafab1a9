import { pageWords } from '../words.ts';

const pages = ['logic', 'glossary', 'hand', 'card'] as const;

/** The ways to what can be learnt: on the start screen as buttons, at the foot as links. */
export function LearnLinks({ isMain = false }: { readonly isMain?: boolean }) {
  const { practice, learn } = pageWords;
  const links = [['practice', practice], ...pages.map((page) => [page, learn[page]])] as const;
  const list = (
    <ul class="learn-links">
      {links.map(([page, name]) => (
        <li key={page}>
          <a class={isMain ? 'button' : undefined} href={`#${page}`}>
            {name}
          </a>
        </li>
      ))}
    </ul>
  );
  return isMain ? list : <nav aria-label={learn.heading}>{list}</nav>;
}
