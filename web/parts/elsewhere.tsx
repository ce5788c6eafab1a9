import { pageWords } from '../words.ts';

/** Another page of this browser goes on with the conversation. */
export function Elsewhere() {
  const words = pageWords.offline;
  return (
    <main class="page elsewhere" id="main">
      <h1>{pageWords.name}</h1>
      <div role="alert">
        <p>
          <b>{words.elsewhere}</b>
        </p>
        <p>{words.elsewhereWhy}</p>
      </div>
      <button type="button" class="button is-main" onClick={() => location.reload()}>
        {words.goOnHere}
      </button>
    </main>
  );
}
