import type { GraphNode } from '../../../src/core/tour/graph.ts';
import { inLanguage, sourceIn } from '../../../src/core/units/texts.ts';
import { describeParameter } from '../../../src/core/words/fill.ts';
import { describeAuthority } from '../../../src/core/words/labels.ts';
import { sayRule } from '../../../src/core/words/say-rule.ts';
import { TermText } from '../../parts/term-text.tsx';
import { learnWords } from '../../words.ts';
import type { Lesson } from '../open-rules.ts';

interface DetailsProps {
  readonly node: GraphNode;
  readonly lesson: Lesson;
}

/** What is told of a thing in the picture when it is opened. */
export function NodeDetails(props: DetailsProps) {
  const { column } = props.node;
  if (column === 'question') return <QuestionTold {...props} />;
  if (column === 'fact') return <FactTold {...props} />;
  if (column === 'rule') return <RuleTold {...props} />;
  return null;
}

function QuestionTold({ node: { name }, lesson: { pack, words } }: DetailsProps) {
  const text = pack.questions.find(({ id }) => id === name)?.text;
  const { why = '', how = '' } = text?.[words.language] ?? text?.['en'] ?? {};
  const own = learnWords.logic;
  return (
    <dl>
      <dt>{own.why}</dt>
      <dd>
        <TermText text={why} />
      </dd>
      <dt>{own.how}</dt>
      <dd>
        <TermText text={how} />
      </dd>
    </dl>
  );
}

function FactTold({ node: { name, back }, lesson: { definitionOf, words } }: DetailsProps) {
  const { unit } = definitionOf(name);
  const own = learnWords.logic;
  const shown = unit === null ? '' : (words.values.units[unit] ?? unit);
  return (
    <>
      {shown !== '' && <p>{own.unit(shown)}</p>}
      {back.length === 0 && <p>{own.unasked}</p>}
    </>
  );
}

function RuleTold({ node: { name }, lesson }: DetailsProps) {
  const { compiled, words, definitionOf, titleOf } = lesson;
  const own = learnWords.logic;
  const found = compiled.rules.find(({ rule }) => rule.id === name);
  if (!found) return null;
  const { rule, parameters } = found;
  return (
    <>
      {sayRule(found, { definitionOf, titleOf }, words).lines.map(({ depth, text }) => (
        <p key={text} class={depth > 0 ? 'say-deeper' : undefined}>
          {text}
        </p>
      ))}
      <dl>
        <dt>{own.why}</dt>
        <dd>
          <TermText text={inLanguage(rule.why, words.language)} />
        </dd>
        <dt>{own.saidBy}</dt>
        <dd>{describeAuthority(rule.authority, words)}</dd>
        <dt>{own.source}</dt>
        <dd>{sourceIn(rule.source, words.language)}</dd>
        {parameters.map((id) => {
          const parameter = compiled.parameters.get(id);
          return (
            parameter && (
              <div key={id}>
                <dt>
                  {own.limit}: {id}
                </dt>
                <dd>
                  <b>{describeParameter(parameter, words)}</b>. {inLanguage(parameter.why, words.language)}{' '}
                  <span class="quiet">({sourceIn(parameter.source, words.language)})</span>
                </dd>
              </div>
            )
          );
        })}
      </dl>
    </>
  );
}
