import type { SharedOut } from '../../src/core/rules/overlay/share-out.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { parametersOn } from '../../src/core/units/parameter.ts';
import { inLanguage } from '../../src/core/units/texts.ts';
import { describeParameter } from '../../src/core/words/fill.ts';
import { joinWords } from '../../src/core/words/units.ts';
import type { Draft } from './draft.ts';
import { useSpeech } from './speech.ts';

interface ChangesProps {
  readonly draft: Draft;
  readonly pack: Pack;
  readonly today: string;
  readonly shared: readonly SharedOut[];
  readonly onChange: (draft: Draft) => void;
}

/** What the draft changes, one sentence each, each to be taken back. */
export function Changes({ draft, pack, today, shared, onChange }: ChangesProps) {
  const { words, bench } = useSpeech();
  const standing = parametersOn(pack.parameters, today);
  const changed = Object.entries(draft.limits).flatMap(([id, value]) => {
    const limit = standing.get(id);
    return limit
      ? [{ id, before: describeParameter(limit, words), after: describeParameter({ ...limit, value }, words) }]
      : [];
  });
  const takeBack = (id: string) => {
    const { [id]: _value, ...limits } = draft.limits;
    const { [id]: _text, ...typed } = draft.typed;
    onChange({ ...draft, limits, typed });
  };
  return (
    <>
      {changed.length === 0 && draft.opened === null && <p>{bench.changes.none}</p>}
      {changed.length > 0 && (
        <ul class="bench-changes">
          {changed.map(({ id, before, after }) => (
            <li key={id}>
              <span>{bench.changes.one(id, before, after)}</span>
              <button type="button" class="button" onClick={() => takeBack(id)}>
                {bench.changes.undo(id)}
              </button>
            </li>
          ))}
        </ul>
      )}
      {shared.length > 0 && (
        <div class="bench-shared">
          <ul>
            {shared.flatMap(({ question, shared: answers }) =>
              answers.map(({ whole, parts }) => (
                <li key={`${question.id} ${whole.id}`}>
                  {bench.shared.one(
                    (question.text[words.language] ?? question.text['en'])?.ask ?? question.id,
                    inLanguage(whole.label, words.language),
                    joinWords(
                      parts.map(({ label }) => bench.shared.part(inLanguage(label, words.language))),
                      bench.shared.and,
                    ),
                  )}
                </li>
              )),
            )}
          </ul>
          <p>{bench.shared.tell}</p>
          <button type="button" class="button" onClick={() => onChange({ ...draft, sharesOut: false })}>
            {bench.shared.undo}
          </button>
        </div>
      )}
      {draft.opened !== null && hasMore(draft.opened) && <p class="quiet">{bench.changes.further}</p>}
    </>
  );
}

function hasMore(content: NonNullable<Draft['opened']>): boolean {
  const { overlay: _head, parameters: _limits, hash: _hash, ...others } = content;
  return Object.keys(others).length > 0;
}
